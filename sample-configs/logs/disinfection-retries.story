sample-configs/logs/disinfection-retries.txt: 24 values understood, 1 line not
understood, 0 ambiguous
understood      line 1: Site: Osier Farm = site.reference Osier Farm
                line 2: PV: 8.0 kW peak = solar.peak_kW 8 kW
                line 3: Tank: 320 litres = tank.volume_L 320 L
                line 4: No immersion heater = immersion.fitted false
                line 6: Relay calls the heat pump = relay.drives heat pump
                line 7: Relay counts: export = relay.counts [export]
                line 8: Relay start: 2.39 kW = relay.start_kW 2.39 kW
                line 9: Relay stop: -0.08 kW = relay.stop_kW -0.08 kW
                line 10: Relay start delay: 7.0 min = relay.startDelay_min 7 min
                line 11: Relay stop delay: 5.0 min = relay.stopDelay_min 5 min
                line 12: Heat pump power input on hot water: 2.1 kW =
                heatPump.hotWaterInput_kW 2.1 kW
                line 13: Heat pump heat output on hot water: 6.3 kW =
                heatPump.hotWaterOutput_kW 6.3 kW
                line 14: Heat pump maximum flow: 69 °C = heatPump.maximumFlow_C
                69 °C
                line 15: Flow above tank: 5 K = heatPump.flowAboveTank_K 5 K
                line 16: Heat pump start lag: 1 min = heatPump.startLag_min
                1 min
                line 17: Heat pump minimum run: 11 min = heatPump.minimumRun_min
                11 min
                line 18: Heat pump minimum off: 10 min = heatPump.minimumOff_min
                10 min
                line 19: Heat pump starts per hour: 3 = heatPump.startsPerHour 3
                line 20: Everyday hot water: start 48.0 °C, stop 54.0 °C =
                heatPump.everyday.start_C 48 °C, heatPump.everyday.stop_C 54 °C
                line 21: Surplus hot water: start 54.0 °C, stop 62.0 °C =
                heatPump.surplus.start_C 54 °C, heatPump.surplus.stop_C 62 °C
                line 22: No battery = battery.fitted false
                line 23: No vehicle charger = vehicleCharger.fitted false
not understood  line 5: No diverter

Osier Farm                                                          FAULT LIKELY
sample-configs/logs/disinfection-retries.txt            2026-06-01 to 2026-06-02

log             sample-configs/logs/disinfection-retries.csv: 2026-06-01
                23:53:01 to 2026-06-02 23:53:01, readings every 1 min, no gaps
                grid (W): grid power, import positive, power, W, by its name;
                sign found: import positive, since it follows the PV power
                heat pump (W): power input of the heat pump, power, W, by its
                name
                pv (W): PV power, power, W, by its name
                tank (°C): tank temperature, temperature, °C, by its name
runs            7 runs found from the heat pump's own power; 7.0 a day, at most
                2 starts in an hour
starts          3 surplus at or above the relay's start; 3 tank already warm,
                without surplus: disinfection or another programme; 1 tank at or
                below the programme's start
stops           4 tank at the programme's stop; 3 tank at the compressor's
                limit, below the programme's stop
observed        typical run 28 min, typical pause 54 min, starts in the worst
                hour 2, starts a day 7, runs that start between 8 and 18 h 29 %,
                tank rise while running 16 K/h, tank at the stop above tank at
                the start 7.1 K

1  99 %     Disinfection does not reach its target and is repeated
            disinfection-retries
   settings     disinfection does not reach its target
   explains     13 of 14 starts and stops in the log
   shown by     the stop at 2026-06-02 02:21, after a run of 57 min, at a
                surplus of -0.3 kW and a tank of 64.0 °C
   predicted    typical pause 76 min (observed 54 min), starts a day 7 (observed
                7), input not covered by surplus at starts by the relay 0 %
                (observed 0 %), runs that start between 8 and 18 h 29 %
                (observed 29 %), starts in the worst hour 1 (observed 2)
   to confirm   read the heat pump's record of disinfection: if this is it,
                cycles are marked as not completed

note            shortest run: 1 min (within 1.0 min), below the 11 min entered
                (heatPump.minimumRun_min)
safety          A diagnosis ranks causes by what they would lead to; it proves
                none. Before work on site, isolate and prove dead; local codes
                and the equipment's own instructions take precedence, and
                electrical and unvented work is for licensed people.
