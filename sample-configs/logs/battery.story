sample-configs/logs/battery.txt: 25 values understood, 1 line not understood, 0
ambiguous
understood      line 1: Site: Gorse End = site.reference Gorse End
                line 2: PV: 7.6 kW peak = solar.peak_kW 7.6 kW
                line 3: Tank: 205 litres = tank.volume_L 205 L
                line 4: No immersion heater = immersion.fitted false
                line 6: Relay calls the heat pump = relay.drives heat pump
                line 7: Relay counts: export, battery = relay.counts [export,
                battery]
                line 8: Relay start: 3.62 kW = relay.start_kW 3.62 kW
                line 9: Relay stop: 0.11 kW = relay.stop_kW 0.11 kW
                line 10: Relay start delay: 6.0 min = relay.startDelay_min 6 min
                line 11: Relay stop delay: 4.0 min = relay.stopDelay_min 4 min
                line 12: Heat pump power input on hot water: 2.9 kW =
                heatPump.hotWaterInput_kW 2.9 kW
                line 13: Heat pump heat output on hot water: 7.9 kW =
                heatPump.hotWaterOutput_kW 7.9 kW
                line 14: Heat pump maximum flow: 68 °C = heatPump.maximumFlow_C
                68 °C
                line 15: Flow above tank: 5 K = heatPump.flowAboveTank_K 5 K
                line 16: Heat pump start lag: 3 min = heatPump.startLag_min
                3 min
                line 17: Heat pump minimum run: 10 min = heatPump.minimumRun_min
                10 min
                line 18: Heat pump minimum off: 15 min = heatPump.minimumOff_min
                15 min
                line 19: Heat pump starts per hour: 3 = heatPump.startsPerHour 3
                line 20: Everyday hot water: start 43.0 °C, stop 49.0 °C =
                heatPump.everyday.start_C 43 °C, heatPump.everyday.stop_C 49 °C
                line 21: Surplus hot water: start 48.0 °C, stop 57.0 °C =
                heatPump.surplus.start_C 48 °C, heatPump.surplus.stop_C 57 °C
                line 22: Battery: 8 kWh, 3 kW = battery.capacity_kWh 8 kWh,
                battery.power_kW 3 kW
                line 23: No vehicle charger = vehicleCharger.fitted false
not understood  line 5: No diverter

Gorse End                                                           FAULT LIKELY
sample-configs/logs/battery.txt                         2026-06-01 to 2026-06-02

log             sample-configs/logs/battery.csv: 2026-06-01 23:50:43 to
                2026-06-02 23:50:43, readings every 1 min, no gaps
                grid (W): grid power, import positive, power, W, by its name;
                sign found: import positive, since it follows the PV power
                heat pump (W): power input of the heat pump, power, W, by its
                name
                pv (W): PV power, power, W, by its name
                tank (°C): tank temperature, temperature, °C, by its name
                battery (W): battery power, power, W, by its name
runs            6 runs found from the heat pump's own power; 6.0 a day, at most
                1 start in an hour
starts          4 surplus at or above the relay's start; 2 tank at or below the
                programme's start
stops           6 tank at the programme's stop
observed        typical run 14 min, starts in the worst hour 1, starts a day 6,
                runs that start between 8 and 18 h 67 %, tank rise while running
                35 K/h, tank at the stop above tank at the start 8.5 K,
                battery's share of the runs without surplus 93 %

1  99 %     Battery supplies the heat pump or takes the surplus first
            battery
   settings     battery supplies it
   explains     12 of 12 starts and stops in the log
   predicted    typical run 16 min (observed 14 min), starts in the worst hour 1
                (observed 1), starts a day 6 (observed 6), runs that start
                between 8 and 18 h 50 % (observed 67 %), input not covered by
                surplus at starts by the relay 0 % (observed 0 %)
   to confirm   switch the battery to standby for a day: if this is it, the runs
                before sunrise show as import

note            surplus before heat pump and heater at starts by the relay: half
                of them from 3.8 to 5.6 kW (relay.start_kW 3.6 kW)
safety          A diagnosis ranks causes by what they would lead to; it proves
                none. Before work on site, isolate and prove dead; local codes
                and the equipment's own instructions take precedence, and
                electrical and unvented work is for licensed people.
