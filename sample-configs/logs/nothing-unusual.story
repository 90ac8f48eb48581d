sample-configs/logs/nothing-unusual.txt: 24 values understood, 1 line not
understood, 0 ambiguous
understood      line 1: Site: Sorrel Bridge = site.reference Sorrel Bridge
                line 2: PV: 8.9 kW peak = solar.peak_kW 8.9 kW
                line 3: Tank: 244 litres = tank.volume_L 244 L
                line 4: No immersion heater = immersion.fitted false
                line 6: Relay calls the heat pump = relay.drives heat pump
                line 7: Relay counts: export = relay.counts [export]
                line 8: Relay start: 3.61 kW = relay.start_kW 3.61 kW
                line 9: Relay stop: 0.05 kW = relay.stop_kW 0.05 kW
                line 10: Relay start delay: 4.0 min = relay.startDelay_min 4 min
                line 11: Relay stop delay: 8.0 min = relay.stopDelay_min 8 min
                line 12: Heat pump power input on hot water: 3.2 kW =
                heatPump.hotWaterInput_kW 3.2 kW
                line 13: Heat pump heat output on hot water: 10.1 kW =
                heatPump.hotWaterOutput_kW 10.1 kW
                line 14: Heat pump maximum flow: 68 °C = heatPump.maximumFlow_C
                68 °C
                line 15: Flow above tank: 5 K = heatPump.flowAboveTank_K 5 K
                line 16: Heat pump start lag: 2 min = heatPump.startLag_min
                2 min
                line 17: Heat pump minimum run: 10 min = heatPump.minimumRun_min
                10 min
                line 18: Heat pump minimum off: 11 min = heatPump.minimumOff_min
                11 min
                line 19: Heat pump starts per hour: 3 = heatPump.startsPerHour 3
                line 20: Everyday hot water: start 43.0 °C, stop 49.0 °C =
                heatPump.everyday.start_C 43 °C, heatPump.everyday.stop_C 49 °C
                line 21: Surplus hot water: start 48.0 °C, stop 59.0 °C =
                heatPump.surplus.start_C 48 °C, heatPump.surplus.stop_C 59 °C
                line 22: No battery = battery.fitted false
                line 23: No vehicle charger = vehicleCharger.fitted false
not understood  line 5: No diverter

Sorrel Bridge                                                    NOTHING UNUSUAL
sample-configs/logs/nothing-unusual.txt                 2026-06-01 to 2026-06-02

log             sample-configs/logs/nothing-unusual.csv: 2026-06-01 23:40:31 to
                2026-06-02 23:56:31, readings every 1 min, 1 gap, together 0.3 h
                grid (W): grid power, import positive, power, W, by its name;
                sign found: import positive, since it follows the PV power
                heat pump (W): power input of the heat pump, power, W, by its
                name
                pv (W): PV power, power, W, by its name
                tank (°C): tank temperature, temperature, °C, by its name
runs            4 runs found from the heat pump's own power; 4.0 a day, at most
                1 start in an hour
starts          2 surplus at or above the relay's start; 2 tank at or below the
                programme's start
stops           4 tank at the programme's stop
observed        typical run 10 min, starts in the worst hour 1, starts a day 4,
                runs that start between 8 and 18 h 67 %, tank rise while running
                27 K/h, tank at the stop above tank at the start 6.4 K

1  98 %     Nothing unusual: weather, draw-off, defrosting or space heating
            nothing-unusual
   settings     as entered
   explains     6 of 7 starts and stops in the log
   predicted    typical run 11 min (observed 10 min), starts in the worst hour 1
                (observed 1), starts a day 4 (observed 4), runs that start
                between 8 and 18 h 50 % (observed 67 %), tank rise while running
                35 K/h (observed 27 K/h)
   to confirm   log another week: if this is it, the runs stay as long and as
                few

safety          A diagnosis ranks causes by what they would lead to; it proves
                none. Before work on site, isolate and prove dead; local codes
                and the equipment's own instructions take precedence, and
                electrical and unvented work is for licensed people.
