sample-configs/logs/stuck-valve.txt: 24 values understood, 1 line not
understood, 0 ambiguous
understood      line 1: Site: Rowan Hill = site.reference Rowan Hill
                line 2: PV: 8.2 kW peak = solar.peak_kW 8.2 kW
                line 3: Tank: 257 litres = tank.volume_L 257 L
                line 4: No immersion heater = immersion.fitted false
                line 6: Relay calls the heat pump = relay.drives heat pump
                line 7: Relay counts: export = relay.counts [export]
                line 8: Relay start: 3.87 kW = relay.start_kW 3.87 kW
                line 9: Relay stop: 0.12 kW = relay.stop_kW 0.12 kW
                line 10: Relay start delay: 6.0 min = relay.startDelay_min 6 min
                line 11: Relay stop delay: 6.0 min = relay.stopDelay_min 6 min
                line 12: Heat pump power input on hot water: 3.3 kW =
                heatPump.hotWaterInput_kW 3.3 kW
                line 13: Heat pump heat output on hot water: 8.9 kW =
                heatPump.hotWaterOutput_kW 8.9 kW
                line 14: Heat pump maximum flow: 68 °C = heatPump.maximumFlow_C
                68 °C
                line 15: Flow above tank: 5 K = heatPump.flowAboveTank_K 5 K
                line 16: Heat pump start lag: 2 min = heatPump.startLag_min
                2 min
                line 17: Heat pump minimum run: 10 min = heatPump.minimumRun_min
                10 min
                line 18: Heat pump minimum off: 15 min = heatPump.minimumOff_min
                15 min
                line 19: Heat pump starts per hour: 3 = heatPump.startsPerHour 3
                line 20: Everyday hot water: start 45.0 °C, stop 50.0 °C =
                heatPump.everyday.start_C 45 °C, heatPump.everyday.stop_C 50 °C
                line 21: Surplus hot water: start 50.0 °C, stop 57.0 °C =
                heatPump.surplus.start_C 50 °C, heatPump.surplus.stop_C 57 °C
                line 22: No battery = battery.fitted false
                line 23: No vehicle charger = vehicleCharger.fitted false
not understood  line 5: No diverter

Rowan Hill                                                          FAULT LIKELY
sample-configs/logs/stuck-valve.txt                     2026-06-01 to 2026-06-02

log             sample-configs/logs/stuck-valve.csv: 2026-06-01 22:29:13 to
                2026-06-02 23:54:13, readings every 1 min, 1 gap, together 1.4 h
                grid (W): grid power, import positive, power, W, by its name;
                sign found: import positive, since it follows the PV power
                heat pump (W): power input of the heat pump, power, W, by its
                name
                pv (W): PV power, power, W, by its name
                tank (°C): tank temperature, temperature, °C, by its name
runs            17 runs found from the heat pump's own power; 17.0 a day, at
                most 2 starts in an hour
starts          9 surplus at or above the relay's start; 8 tank at or below the
                programme's start
stops           10 neither surplus nor tank temperature gives a reason; 7
                surplus fell below the relay's start
observed        typical run 74 min, typical pause 21 min, starts in the worst
                hour 2, starts a day 17, runs that start between 8 and 18 h
                64 %, tank rise while running 0 K/h, tank at the stop above tank
                at the start 0 K

1  99 %     Diverting valve is stuck: hot water is called but the tank does not
            warm
            stuck-valve
   settings     no heat reaches the tank
   explains     22 of 32 starts and stops in the log
   shown by     the stop at 2026-06-02 10:56, after a run of 73 min, at a
                surplus of -0.1 kW and a tank of 20.4 °C
   predicted    typical run 60 min (observed 74 min), typical pause 15 min
                (observed 21 min), starts in the worst hour 1 (observed 2),
                starts a day 19 (observed 17), runs that start between 8 and
                18 h 40 % (observed 64 %)
   to confirm   measure the pipes at both outlets of the valve during a call for
                hot water: if this is it, the tank's stays cool

note            power input: 2.6 kW in the log, 3.3 kW entered
                (heatPump.hotWaterInput_kW)
                surplus before heat pump and heater at starts by the relay: half
                of them from 3.6 to 6.0 kW (relay.start_kW 3.9 kW)
                surplus before heat pump and heater at stops by the relay: half
                of them from 0.5 to 2.5 kW (relay.stop_kW 0.1 kW)
safety          A diagnosis ranks causes by what they would lead to; it proves
                none. Before work on site, isolate and prove dead; local codes
                and the equipment's own instructions take precedence, and
                electrical and unvented work is for licensed people.
