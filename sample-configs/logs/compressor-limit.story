sample-configs/logs/compressor-limit.txt: 26 values understood, 0 lines not
understood, 0 ambiguous
understood      line 1: Site: Nettlebed = site.reference Nettlebed
                line 2: PV: 6.6 kW peak = solar.peak_kW 6.6 kW
                line 3: Tank: 222 litres = tank.volume_L 222 L
                line 4: Immersion heater: 3 kW at 230 V = immersion.power_kW
                3 kW, immersion.ratedAt_V 230 V
                line 5: Diverter minimum: 0.15 kW = diverter.minimum_kW 0.15 kW
                line 6: Relay calls the heat pump = relay.drives heat pump
                line 7: Relay counts: export, immersion = relay.counts [export,
                immersion]
                line 8: Relay start: 3.69 kW = relay.start_kW 3.69 kW
                line 9: Relay stop: 0.32 kW = relay.stop_kW 0.32 kW
                line 10: Relay start delay: 5.0 min = relay.startDelay_min 5 min
                line 11: Relay stop delay: 7.0 min = relay.stopDelay_min 7 min
                line 12: Heat pump power input on hot water: 3.1 kW =
                heatPump.hotWaterInput_kW 3.1 kW
                line 13: Heat pump heat output on hot water: 9.9 kW =
                heatPump.hotWaterOutput_kW 9.9 kW
                line 14: Heat pump maximum flow: 54 °C = heatPump.maximumFlow_C
                54 °C
                line 15: Flow above tank: 5 K = heatPump.flowAboveTank_K 5 K
                line 16: Heat pump start lag: 2 min = heatPump.startLag_min
                2 min
                line 17: Heat pump minimum run: 8 min = heatPump.minimumRun_min
                8 min
                line 18: Heat pump minimum off: 9 min = heatPump.minimumOff_min
                9 min
                line 19: Heat pump starts per hour: 3 = heatPump.startsPerHour 3
                line 20: Everyday hot water: start 46.0 °C, stop 53.0 °C =
                heatPump.everyday.start_C 46 °C, heatPump.everyday.stop_C 53 °C
                line 21: Surplus hot water: start 52.0 °C, stop 63.0 °C =
                heatPump.surplus.start_C 52 °C, heatPump.surplus.stop_C 63 °C
                line 22: No battery = battery.fitted false
                line 23: No vehicle charger = vehicleCharger.fitted false

Nettlebed                                                           FAULT LIKELY
sample-configs/logs/compressor-limit.txt                2026-06-01 to 2026-06-02

log             sample-configs/logs/compressor-limit.csv: 2026-06-01 00:02 to
                2026-06-02 01:18, readings every 1 min, 1 gap, together 1.3 h
                grid (kW): grid power, import positive, power, kW, by its name;
                sign found: import positive, since it follows the PV power
                heat pump (kW): power input of the heat pump, power, kW, by its
                name
                pv (kW): PV power, power, kW, by its name
                tank (°C): tank temperature, temperature, °C, by its name
                immersion (kW): power of the immersion heater, power, kW, by its
                name
runs            3 runs found from the heat pump's own power; 3.0 a day, at most
                3 starts in an hour
starts          2 tank at or below the programme's start; 1 neither surplus nor
                tank temperature gives a reason
stops           3 tank at the compressor's limit, below the programme's stop
observed        typical run 6.5 min, typical pause 25 min, starts in the worst
                hour 3, starts a day 3, tank rise while running 42 K/h, tank at
                the stop above tank at the start 4.8 K

1  99 %     Compressor reaches its flow limit before the programme's stop
            compressor-limit
   settings     as entered
   explains     6 of 6 starts and stops in the log
   shown by     the stop at 2026-06-01 07:08, after a run of 7 min, at a surplus
                of 1.0 kW and a tank of 49.3 °C
   predicted    typical run 2.5 min (observed 6.5 min), typical pause 53 min
                (observed 25 min), starts in the worst hour 2 (observed 3),
                starts a day 17 (observed 3), runs that start between 8 and 18 h
                50 % (observed 0 %)
   to confirm   lower the stop by 5 K for a day: if this is it, the runs end by
                the programme and the next start waits for the differential
   finding      stop-above-compressor-reach: heatPump.surplus.stop_C 63.0
                -> 48.0, heatPump.surplus.start_C 52.0 -> 37.0, tried

note            sample-configs/logs/compressor-limit.csv: dates taken as
                day/month/year: no row shows which
safety          A diagnosis ranks causes by what they would lead to; it proves
                none. Before work on site, isolate and prove dead; local codes
                and the equipment's own instructions take precedence, and
                electrical and unvented work is for licensed people.
