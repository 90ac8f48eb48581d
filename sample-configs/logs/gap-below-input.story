sample-configs/logs/gap-below-input.txt: 24 values understood, 1 line not
understood, 0 ambiguous
understood      line 1: Site: Ashmoor = site.reference Ashmoor
                line 2: PV: 7.4 kW peak = solar.peak_kW 7.4 kW
                line 3: Tank: 261 litres = tank.volume_L 261 L
                line 4: No immersion heater = immersion.fitted false
                line 6: Relay calls the heat pump = relay.drives heat pump
                line 7: Relay counts: export = relay.counts [export]
                line 8: Relay start: 3.50 kW = relay.start_kW 3.5 kW
                line 9: Relay stop: 3.07 kW = relay.stop_kW 3.07 kW
                line 10: Relay start delay: 1.0 min = relay.startDelay_min 1 min
                line 11: Relay stop delay: 3.0 min = relay.stopDelay_min 3 min
                line 12: Heat pump power input on hot water: 3.2 kW =
                heatPump.hotWaterInput_kW 3.2 kW
                line 13: Heat pump heat output on hot water: 8.0 kW =
                heatPump.hotWaterOutput_kW 8 kW
                line 14: Heat pump maximum flow: 70 °C = heatPump.maximumFlow_C
                70 °C
                line 15: Flow above tank: 5 K = heatPump.flowAboveTank_K 5 K
                line 16: Heat pump start lag: 3 min = heatPump.startLag_min
                3 min
                line 17: Heat pump minimum run: 9 min = heatPump.minimumRun_min
                9 min
                line 18: Heat pump minimum off: 11 min = heatPump.minimumOff_min
                11 min
                line 19: Heat pump starts per hour: 3 = heatPump.startsPerHour 3
                line 20: Everyday hot water: start 46.0 °C, stop 53.0 °C =
                heatPump.everyday.start_C 46 °C, heatPump.everyday.stop_C 53 °C
                line 21: Surplus hot water: start 53.0 °C, stop 61.0 °C =
                heatPump.surplus.start_C 53 °C, heatPump.surplus.stop_C 61 °C
                line 22: No battery = battery.fitted false
                line 23: No vehicle charger = vehicleCharger.fitted false
not understood  line 5: No diverter

Ashmoor                                                             FAULT LIKELY
sample-configs/logs/gap-below-input.txt                 2026-06-01 to 2026-06-02

log             sample-configs/logs/gap-below-input.csv: 2026-06-01 23:11:39 to
                2026-06-02 23:45:39, readings every 1 min, 1 gap, together 0.6 h
                grid (W): grid power, import positive, power, W, by its name;
                sign found: import positive, since it follows the PV power
                heat pump (W): power input of the heat pump, power, W, by its
                name
                pv (W): PV power, power, W, by its name
                tank (°C): tank temperature, temperature, °C, by its name
runs            5 runs found from the heat pump's own power; 5.0 a day, at most
                2 starts in an hour
starts          4 surplus at or above the relay's start; 1 tank at or below the
                programme's start
stops           2 surplus fell below the relay's start; 2 surplus between start
                and stop, where the heat pump's own input opens the relay; 1
                tank at the programme's stop
observed        typical run 9 min, typical pause 52 min, starts in the worst
                hour 2, starts a day 5, runs that start between 8 and 18 h 80 %,
                tank rise while running 29 K/h, tank at the stop above tank at
                the start 4.4 K

1  99 %     Gap between start and stop is no wider than the heat pump's power
            input
            gap-below-input
   settings     as entered
   explains     10 of 10 starts and stops in the log
   shown by     the start at 2026-06-02 15:48, after a pause of 35 min, at a
                surplus of 4.0 kW and a tank of 51.5 °C
   predicted    typical run 9 min (observed 9 min), typical pause 38 min
                (observed 52 min), starts in the worst hour 2 (observed 2),
                starts a day 5.9 (observed 5), runs that start between 8 and
                18 h 83 % (observed 80 %)
   to confirm   set relay.stop_kW to 0.1 for a clear day: if this is it, the
                starts fall to a few a day
   finding      gap-below-heat-pump-draw: relay.stop_kW 3.07 -> 0.1,
                relay.start_kW 3.5 -> 3.4, tried

note            surplus before heat pump and heater at starts by the relay: half
                of them from 4.0 to 4.8 kW (relay.start_kW 3.5 kW)
                surplus before heat pump and heater at stops by the relay: half
                of them from 3.7 to 4.9 kW (relay.stop_kW 3.1 kW)
safety          A diagnosis ranks causes by what they would lead to; it proves
                none. Before work on site, isolate and prove dead; local codes
                and the equipment's own instructions take precedence, and
                electrical and unvented work is for licensed people.
