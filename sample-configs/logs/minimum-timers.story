sample-configs/logs/minimum-timers.txt: 24 values understood, 1 line not
understood, 0 ambiguous
understood      line 1: Site: Quince Court = site.reference Quince Court
                line 2: PV: 6.5 kW peak = solar.peak_kW 6.5 kW
                line 3: Tank: 231 litres = tank.volume_L 231 L
                line 4: No immersion heater = immersion.fitted false
                line 6: Relay calls the heat pump = relay.drives heat pump
                line 7: Relay counts: export = relay.counts [export]
                line 8: Relay start: 2.28 kW = relay.start_kW 2.28 kW
                line 9: Relay stop: -0.01 kW = relay.stop_kW -0.01 kW
                line 10: Relay start delay: 4.0 min = relay.startDelay_min 4 min
                line 11: Relay stop delay: 3.0 min = relay.stopDelay_min 3 min
                line 12: Heat pump power input on hot water: 2.0 kW =
                heatPump.hotWaterInput_kW 2 kW
                line 13: Heat pump heat output on hot water: 5.4 kW =
                heatPump.hotWaterOutput_kW 5.4 kW
                line 14: Heat pump maximum flow: 69 °C = heatPump.maximumFlow_C
                69 °C
                line 15: Flow above tank: 5 K = heatPump.flowAboveTank_K 5 K
                line 16: Heat pump start lag: 1 min = heatPump.startLag_min
                1 min
                line 17: Heat pump minimum run: 12 min = heatPump.minimumRun_min
                12 min
                line 18: Heat pump minimum off: 12 min = heatPump.minimumOff_min
                12 min
                line 19: Heat pump starts per hour: 3 = heatPump.startsPerHour 3
                line 20: Everyday hot water: start 42.0 °C, stop 50.0 °C =
                heatPump.everyday.start_C 42 °C, heatPump.everyday.stop_C 50 °C
                line 21: Surplus hot water: start 52.0 °C, stop 60.0 °C =
                heatPump.surplus.start_C 52 °C, heatPump.surplus.stop_C 60 °C
                line 22: No battery = battery.fitted false
                line 23: No vehicle charger = vehicleCharger.fitted false
not understood  line 5: No diverter

Quince Court                                                        FAULT LIKELY
sample-configs/logs/minimum-timers.txt                  2026-06-02 to 2026-06-03

log             sample-configs/logs/minimum-timers.csv: 2026-06-02 00:07 to
                2026-06-03 00:07, readings every 1 min, no gaps
                grid (kW): grid power, import positive, power, kW, by its name;
                sign found: import positive, since it follows the PV power
                heat pump (kW): power input of the heat pump, power, kW, by its
                name
                pv (kW): PV power, power, kW, by its name
                tank (°C): tank temperature, temperature, °C, by its name
runs            11 runs found from the heat pump's own power; 11.0 a day, at
                most 3 starts in an hour
starts          7 surplus at or above the relay's start; 4 tank at or below the
                programme's start
stops           6 tank at the programme's stop; 5 surplus fell below the relay's
                start
observed        typical run 22 min, typical pause 44 min, starts in the worst
                hour 3, starts a day 11, runs that start between 8 and 18 h
                64 %, tank rise while running 19 K/h, tank at the stop above
                tank at the start 7.9 K

1  99 %     Heat pump's own minimum run or off time is too short or not in force
            minimum-timers
   settings     minimum times in force shorter than entered, about 2 min
   explains     18 of 22 starts and stops in the log
   shown by     the stop at 2026-06-02 08:46, after a run of 9 min, at a surplus
                of 0.5 kW and a tank of 50.1 °C
   predicted    starts a day 10 (observed 11), runs that start between 8 and
                18 h 60 % (observed 64 %), typical pause 36 min (observed
                44 min), starts in the worst hour 2 (observed 3), input not
                covered by surplus at starts by the relay 0 % (observed 0 %)
   to confirm   withdraw the call 2 min after a start: if this is it, the heat
                pump stops before the minimum run entered

note            sample-configs/logs/minimum-timers.csv: dates taken as
                day/month/year: no row shows which
                shortest run: 9 min (within 1.0 min), below the 12 min entered
                (heatPump.minimumRun_min)
                surplus before heat pump and heater at starts by the relay: half
                of them from 2.1 to 4.4 kW (relay.start_kW 2.3 kW)
                surplus before heat pump and heater at stops by the relay: half
                of them from 0.5 to 1.7 kW (relay.stop_kW 0.0 kW)
safety          A diagnosis ranks causes by what they would lead to; it proves
                none. Before work on site, isolate and prove dead; local codes
                and the equipment's own instructions take precedence, and
                electrical and unvented work is for licensed people.
