sample-configs/logs/tank-sensor.txt: 25 values understood, 1 line not
understood, 0 ambiguous
understood      line 1: Site: Ivy Bank = site.reference Ivy Bank
                line 2: PV: 5.0 kW peak = solar.peak_kW 5 kW
                line 3: Tank: 311 litres = tank.volume_L 311 L
                line 4: No immersion heater = immersion.fitted false
                line 6: Relay calls the heat pump = relay.drives heat pump
                line 7: Relay counts: export, battery = relay.counts [export,
                battery]
                line 8: Relay start: 3.53 kW = relay.start_kW 3.53 kW
                line 9: Relay stop: 0.00 kW = relay.stop_kW 0 kW
                line 10: Relay start delay: 6.0 min = relay.startDelay_min 6 min
                line 11: Relay stop delay: 8.0 min = relay.stopDelay_min 8 min
                line 12: Heat pump power input on hot water: 3.0 kW =
                heatPump.hotWaterInput_kW 3 kW
                line 13: Heat pump heat output on hot water: 7.7 kW =
                heatPump.hotWaterOutput_kW 7.7 kW
                line 14: Heat pump maximum flow: 65 °C = heatPump.maximumFlow_C
                65 °C
                line 15: Flow above tank: 5 K = heatPump.flowAboveTank_K 5 K
                line 16: Heat pump start lag: 2 min = heatPump.startLag_min
                2 min
                line 17: Heat pump minimum run: 12 min = heatPump.minimumRun_min
                12 min
                line 18: Heat pump minimum off: 9 min = heatPump.minimumOff_min
                9 min
                line 19: Heat pump starts per hour: 3 = heatPump.startsPerHour 3
                line 20: Everyday hot water: start 43.0 °C, stop 50.0 °C =
                heatPump.everyday.start_C 43 °C, heatPump.everyday.stop_C 50 °C
                line 21: Surplus hot water: start 51.0 °C, stop 56.0 °C =
                heatPump.surplus.start_C 51 °C, heatPump.surplus.stop_C 56 °C
                line 22: Battery: 8 kWh, 3 kW = battery.capacity_kWh 8 kWh,
                battery.power_kW 3 kW
                line 23: No vehicle charger = vehicleCharger.fitted false
not understood  line 5: No diverter

Ivy Bank                                                            FAULT LIKELY
sample-configs/logs/tank-sensor.txt                     2026-06-02 to 2026-06-03

log             sample-configs/logs/tank-sensor.csv: 2026-06-02 00:14:55 to
                2026-06-03 00:14:55, readings every 1 min, no gaps
                grid (W): grid power, import positive, power, W, by its name;
                sign found: import positive, since it follows the PV power
                heat pump (W): power input of the heat pump, power, W, by its
                name
                pv (W): PV power, power, W, by its name
                tank (°C): tank temperature, temperature, °C, by its name
                battery (W): battery power, power, W, by its name
runs            4 runs found from the heat pump's own power; 4.0 a day, at most
                1 start in an hour
starts          2 surplus at or above the relay's start; 2 tank already warm,
                without surplus: disinfection or another programme
stops           2 neither surplus nor tank temperature gives a reason; 1 tank at
                the programme's stop; 1 tank at the compressor's limit, below
                the programme's stop
observed        typical run 20 min, starts in the worst hour 1, starts a day 4,
                runs that start between 8 and 18 h 50 %, tank rise while running
                22 K/h, tank at the stop above tank at the start 7.4 K,
                battery's share of the runs without surplus 3 %

1  99 %     Tank sensor reads off, or sits where it does not see the store
            tank-sensor
   settings     sensor reads about 7 K low
   explains     8 of 8 starts and stops in the log
   shown by     the start at 2026-06-02 22:17, after a pause of 7.1 h, at a
                surplus of -0.3 kW and a tank of 49.6 °C
   predicted    starts a day 5 (observed 4), typical run 20 min (observed
                20 min), input not covered by surplus at starts by the relay 0 %
                (observed 0 %), tank rise while running 21 K/h (observed
                22 K/h), pauses without standby power 0 % (observed 0 %)
   to confirm   put a reference thermometer in the sensor's pocket: if this is
                it, the two differ by several K

note            shortest run: 4 min (within 1.0 min), below the 12 min entered
                (heatPump.minimumRun_min)
safety          A diagnosis ranks causes by what they would lead to; it proves
                none. Before work on site, isolate and prove dead; local codes
                and the equipment's own instructions take precedence, and
                electrical and unvented work is for licensed people.
