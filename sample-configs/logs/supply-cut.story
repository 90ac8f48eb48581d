sample-configs/logs/supply-cut.txt: 25 values understood, 1 line not understood,
0 ambiguous
understood      line 1: Site: Plover Green = site.reference Plover Green
                line 2: PV: 6.8 kW peak = solar.peak_kW 6.8 kW
                line 3: Tank: 257 litres = tank.volume_L 257 L
                line 4: No immersion heater = immersion.fitted false
                line 6: Relay calls the heat pump = relay.drives heat pump
                line 7: Relay counts: export, battery = relay.counts [export,
                battery]
                line 8: Relay start: 2.31 kW = relay.start_kW 2.31 kW
                line 9: Relay stop: 0.05 kW = relay.stop_kW 0.05 kW
                line 10: Relay start delay: 7.0 min = relay.startDelay_min 7 min
                line 11: Relay stop delay: 6.0 min = relay.stopDelay_min 6 min
                line 12: Heat pump power input on hot water: 2.0 kW =
                heatPump.hotWaterInput_kW 2 kW
                line 13: Heat pump heat output on hot water: 6.6 kW =
                heatPump.hotWaterOutput_kW 6.6 kW
                line 14: Heat pump maximum flow: 69 °C = heatPump.maximumFlow_C
                69 °C
                line 15: Flow above tank: 5 K = heatPump.flowAboveTank_K 5 K
                line 16: Heat pump start lag: 2 min = heatPump.startLag_min
                2 min
                line 17: Heat pump minimum run: 12 min = heatPump.minimumRun_min
                12 min
                line 18: Heat pump minimum off: 8 min = heatPump.minimumOff_min
                8 min
                line 19: Heat pump starts per hour: 3 = heatPump.startsPerHour 3
                line 20: Everyday hot water: start 44.0 °C, stop 52.0 °C =
                heatPump.everyday.start_C 44 °C, heatPump.everyday.stop_C 52 °C
                line 21: Surplus hot water: start 53.0 °C, stop 60.0 °C =
                heatPump.surplus.start_C 53 °C, heatPump.surplus.stop_C 60 °C
                line 22: Battery: 8 kWh, 3 kW = battery.capacity_kWh 8 kWh,
                battery.power_kW 3 kW
                line 23: No vehicle charger = vehicleCharger.fitted false
not understood  line 5: No diverter

Plover Green                                                        FAULT LIKELY
sample-configs/logs/supply-cut.txt                      2026-06-02 to 2026-06-03

log             sample-configs/logs/supply-cut.csv: 2026-06-02 00:14:56 to
                2026-06-03 00:14:56, readings every 1 min, no gaps
                grid (W): grid power, import positive, power, W, by its name;
                sign found: import positive, since it follows the PV power
                heat pump (W): power input of the heat pump, power, W, by its
                name
                pv (W): PV power, power, W, by its name
                tank (°C): tank temperature, temperature, °C, by its name
                battery (W): battery power, power, W, by its name
runs            6 runs found from the heat pump's own power; 6.0 a day, at most
                2 starts in an hour
starts          6 surplus at or above the relay's start
stops           5 tank at the programme's stop; 1 surplus fell below the relay's
                start
observed        typical run 24 min, typical pause 42 min, starts in the worst
                hour 2, starts a day 6, runs that start between 8 and 18 h
                100 %, tank rise while running 21 K/h, tank at the stop above
                tank at the start 8.8 K, pauses without standby power 40 %

1  95 %     Supply of the heat pump is cut instead of its call withdrawn
            supply-cut
   settings     supply cut with the call
   explains     12 of 12 starts and stops in the log
   shown by     the stop at 2026-06-02 12:28, after a run of 6 min, at a surplus
                of 0.5 kW and a tank of 51.3 °C
   predicted    pauses without standby power 50 % (observed 40 %), typical pause
                43 min (observed 42 min), starts in the worst hour 2 (observed
                2), starts a day 6 (observed 6), runs that start between 8 and
                18 h 100 % (observed 100 %)
   to confirm   look at the heat pump's display while the relay is open: if this
                is it, it is dark

note            shortest run: 6 min (within 1.0 min), below the 12 min entered
                (heatPump.minimumRun_min)
                surplus before heat pump and heater at starts by the relay: half
                of them from 1.6 to 4.0 kW (relay.start_kW 2.3 kW)
safety          A diagnosis ranks causes by what they would lead to; it proves
                none. Before work on site, isolate and prove dead; local codes
                and the equipment's own instructions take precedence, and
                electrical and unvented work is for licensed people.
