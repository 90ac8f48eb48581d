sample-configs/logs/delay-shorter-than-cloud.txt: 24 values understood, 1 line
not understood, 0 ambiguous
understood      line 1: Site: Coldbrook = site.reference Coldbrook
                line 2: PV: 7.8 kW peak = solar.peak_kW 7.8 kW
                line 3: Tank: 242 litres = tank.volume_L 242 L
                line 4: No immersion heater = immersion.fitted false
                line 6: Relay calls the heat pump = relay.drives heat pump
                line 7: Relay counts: export = relay.counts [export]
                line 8: Relay start: 3.52 kW = relay.start_kW 3.52 kW
                line 9: Relay stop: 0.04 kW = relay.stop_kW 0.04 kW
                line 10: Relay start delay: 0.9 min = relay.startDelay_min
                0.9 min
                line 11: Relay stop delay: 0.3 min = relay.stopDelay_min 0.3 min
                line 12: Heat pump power input on hot water: 3.1 kW =
                heatPump.hotWaterInput_kW 3.1 kW
                line 13: Heat pump heat output on hot water: 8.2 kW =
                heatPump.hotWaterOutput_kW 8.2 kW
                line 14: Heat pump maximum flow: 69 °C = heatPump.maximumFlow_C
                69 °C
                line 15: Flow above tank: 5 K = heatPump.flowAboveTank_K 5 K
                line 16: Heat pump start lag: 2 min = heatPump.startLag_min
                2 min
                line 17: Heat pump minimum run: 6 min = heatPump.minimumRun_min
                6 min
                line 18: Heat pump minimum off: 5 min = heatPump.minimumOff_min
                5 min
                line 19: Heat pump starts per hour: 3 = heatPump.startsPerHour 3
                line 20: Everyday hot water: start 42.0 °C, stop 49.0 °C =
                heatPump.everyday.start_C 42 °C, heatPump.everyday.stop_C 49 °C
                line 21: Surplus hot water: start 49.0 °C, stop 59.0 °C =
                heatPump.surplus.start_C 49 °C, heatPump.surplus.stop_C 59 °C
                line 22: No battery = battery.fitted false
                line 23: No vehicle charger = vehicleCharger.fitted false
not understood  line 5: No diverter

Coldbrook                                                           FAULT LIKELY
sample-configs/logs/delay-shorter-than-cloud.txt        2026-06-02 to 2026-06-03

log             sample-configs/logs/delay-shorter-than-cloud.csv: 2026-06-02
                00:12:10 to 2026-06-03 01:31:10, readings every 1 min, 1 gap,
                together 1.3 h
                grid (W): grid power, import positive, power, W, by its name;
                sign found: import positive, since it follows the PV power
                heat pump (W): power input of the heat pump, power, W, by its
                name
                pv (W): PV power, power, W, by its name
                tank (°C): tank temperature, temperature, °C, by its name
runs            8 runs found from the heat pump's own power; 8.0 a day, at most
                3 starts in an hour
starts          7 surplus at or above the relay's start; 1 tank at or below the
                programme's start
stops           6 surplus fell below the relay's start; 2 tank at the
                programme's stop
observed        typical run 6.7 min, typical pause 6.9 min, starts in the worst
                hour 3, starts a day 8, runs that start between 8 and 18 h 75 %,
                tank rise while running 32 K/h, tank at the stop above tank at
                the start 3.6 K

1  97 %     Relay delays are shorter than a passing cloud
            delay-shorter-than-cloud
   settings     as entered
   explains     14 of 16 starts and stops in the log
   shown by     the stop at 2026-06-02 15:12, after a run of 6 min, at a surplus
                of 4.9 kW and a tank of 52.2 °C
   predicted    input not covered by surplus at starts by the relay 0 %
                (observed 0 %), typical run 8 min (observed 6.7 min), typical
                pause 30 min (observed 6.9 min), starts in the worst hour 2
                (observed 3), starts a day 6.6 (observed 8)
   to confirm   set both delays to 5 min for a cloudy day: if this is it, the
                stops at passing clouds end

note            surplus before heat pump and heater at starts by the relay: half
                of them from 3.0 to 6.0 kW (relay.start_kW 3.5 kW)
                surplus before heat pump and heater at stops by the relay: half
                of them from 3.9 to 6.0 kW (relay.stop_kW 0.0 kW)
safety          A diagnosis ranks causes by what they would lead to; it proves
                none. Before work on site, isolate and prove dead; local codes
                and the equipment's own instructions take precedence, and
                electrical and unvented work is for licensed people.
