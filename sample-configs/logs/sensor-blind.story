sample-configs/logs/sensor-blind.txt: 25 values understood, 1 line not
understood, 0 ambiguous
understood      line 1: Site: Larch Close = site.reference Larch Close
                line 2: PV: 5.3 kW peak = solar.peak_kW 5.3 kW
                line 3: Tank: 304 litres = tank.volume_L 304 L
                line 4: No immersion heater = immersion.fitted false
                line 6: Relay calls the heat pump = relay.drives heat pump
                line 7: Relay counts: export, battery = relay.counts [export,
                battery]
                line 8: Relay start: 2.51 kW = relay.start_kW 2.51 kW
                line 9: Relay stop: -0.05 kW = relay.stop_kW -0.05 kW
                line 10: Relay start delay: 6.0 min = relay.startDelay_min 6 min
                line 11: Relay stop delay: 7.0 min = relay.stopDelay_min 7 min
                line 12: Heat pump power input on hot water: 2.0 kW =
                heatPump.hotWaterInput_kW 2 kW
                line 13: Heat pump heat output on hot water: 6.0 kW =
                heatPump.hotWaterOutput_kW 6 kW
                line 14: Heat pump maximum flow: 71 °C = heatPump.maximumFlow_C
                71 °C
                line 15: Flow above tank: 5 K = heatPump.flowAboveTank_K 5 K
                line 16: Heat pump start lag: 3 min = heatPump.startLag_min
                3 min
                line 17: Heat pump minimum run: 10 min = heatPump.minimumRun_min
                10 min
                line 18: Heat pump minimum off: 15 min = heatPump.minimumOff_min
                15 min
                line 19: Heat pump starts per hour: 3 = heatPump.startsPerHour 3
                line 20: Everyday hot water: start 45.0 °C, stop 53.0 °C =
                heatPump.everyday.start_C 45 °C, heatPump.everyday.stop_C 53 °C
                line 21: Surplus hot water: start 53.0 °C, stop 61.0 °C =
                heatPump.surplus.start_C 53 °C, heatPump.surplus.stop_C 61 °C
                line 22: Battery: 8 kWh, 3 kW = battery.capacity_kWh 8 kWh,
                battery.power_kW 3 kW
                line 23: No vehicle charger = vehicleCharger.fitted false
not understood  line 5: No diverter

Larch Close                                                         FAULT LIKELY
sample-configs/logs/sensor-blind.txt                    2026-06-02 to 2026-06-03

log             sample-configs/logs/sensor-blind.csv: 2026-06-02 00:07:54 to
                2026-06-03 00:07:54, readings every 1 min, no gaps
                grid (W): grid power, import positive, power, W, by its name;
                sign found: import positive, since it follows the PV power
                heat pump (W): power input of the heat pump, power, W, by its
                name
                pv (W): PV power, power, W, by its name
                tank (°C): tank temperature, temperature, °C, by its name
                battery (W): battery power, power, W, by its name
runs            3 runs found from the heat pump's own power; 3.0 a day, at most
                1 start in an hour
starts          3 surplus at or above the relay's start
stops           3 tank at the programme's stop
observed        typical run 43 min, starts in the worst hour 1, starts a day 3,
                runs that start between 8 and 18 h 67 %, tank rise while running
                16 K/h, tank at the stop above tank at the start 11 K, battery's
                share of the runs without surplus 4 %

1  99 %     Grid sensor does not see the heat pump: wrong phase or not upstream
            of it
            sensor-blind
   settings     heat pump not downstream of the sensor
   explains     6 of 6 starts and stops in the log
   shown by     the stop at 2026-06-02 14:37, after a run of 43 min, at a
                surplus of 0.5 kW and a tank of 60.8 °C
   predicted    runs that start between 8 and 18 h 67 % (observed 67 %), typical
                run 42 min (observed 43 min), starts in the worst hour 1
                (observed 1), starts a day 3 (observed 3), tank rise while
                running 17 K/h (observed 16 K/h)
   to confirm   switch the heat pump on by hand: if this is it, the controller's
                reading does not fall by the input

safety          A diagnosis ranks causes by what they would lead to; it proves
                none. Before work on site, isolate and prove dead; local codes
                and the equipment's own instructions take precedence, and
                electrical and unvented work is for licensed people.
