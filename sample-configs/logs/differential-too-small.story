sample-configs/logs/differential-too-small.txt: 25 values understood, 1 line not
understood, 0 ambiguous
understood      line 1: Site: Dunnock House = site.reference Dunnock House
                line 2: PV: 7.2 kW peak = solar.peak_kW 7.2 kW
                line 3: Tank: 174 litres = tank.volume_L 174 L
                line 4: No immersion heater = immersion.fitted false
                line 6: Relay calls the heat pump = relay.drives heat pump
                line 7: Relay counts: export, battery = relay.counts [export,
                battery]
                line 8: Relay start: 2.21 kW = relay.start_kW 2.21 kW
                line 9: Relay stop: 0.02 kW = relay.stop_kW 0.02 kW
                line 10: Relay start delay: 4.0 min = relay.startDelay_min 4 min
                line 11: Relay stop delay: 7.0 min = relay.stopDelay_min 7 min
                line 12: Heat pump power input on hot water: 1.7 kW =
                heatPump.hotWaterInput_kW 1.7 kW
                line 13: Heat pump heat output on hot water: 6.5 kW =
                heatPump.hotWaterOutput_kW 6.5 kW
                line 14: Heat pump maximum flow: 68 °C = heatPump.maximumFlow_C
                68 °C
                line 15: Flow above tank: 5 K = heatPump.flowAboveTank_K 5 K
                line 16: Heat pump start lag: 2 min = heatPump.startLag_min
                2 min
                line 17: Heat pump minimum run: 3 min = heatPump.minimumRun_min
                3 min
                line 18: Heat pump minimum off: 10 min = heatPump.minimumOff_min
                10 min
                line 19: Heat pump starts per hour: 3 = heatPump.startsPerHour 3
                line 20: Everyday hot water: start 49.0 °C, stop 50.0 °C =
                heatPump.everyday.start_C 49 °C, heatPump.everyday.stop_C 50 °C
                line 21: Surplus hot water: start 57.3 °C, stop 59.0 °C =
                heatPump.surplus.start_C 57.3 °C, heatPump.surplus.stop_C 59 °C
                line 22: Battery: 8 kWh, 3 kW = battery.capacity_kWh 8 kWh,
                battery.power_kW 3 kW
                line 23: No vehicle charger = vehicleCharger.fitted false
not understood  line 5: No diverter

Dunnock House                                                       FAULT LIKELY
sample-configs/logs/differential-too-small.txt          2026-06-01 to 2026-06-02

log             sample-configs/logs/differential-too-small.csv: 2026-06-01
                22:07:18 to 2026-06-02 23:58:18, readings every 1 min, 2 gaps,
                together 1.8 h
                grid (W): grid power, import positive, power, W, by its name;
                sign found: import positive, since it follows the PV power
                heat pump (W): power input of the heat pump, power, W, by its
                name
                pv (W): PV power, power, W, by its name
                tank (°C): tank temperature, temperature, °C, by its name
                battery (W): battery power, power, W, by its name
runs            14 runs found from the heat pump's own power; 14.0 a day, at
                most 2 starts in an hour
starts          10 surplus at or above the relay's start; 4 tank at or below the
                programme's start
stops           13 tank at the programme's stop; 1 neither surplus nor tank
                temperature gives a reason
observed        typical run 4.7 min, typical pause 42 min, starts in the worst
                hour 2, starts a day 14, runs that start between 8 and 18 h
                71 %, tank rise while running 31 K/h, tank at the stop above
                tank at the start 2.9 K, battery's share of the runs without
                surplus 3 %

1  99 %     Differential of the temperature programme is too small for the heat
            output
            differential-too-small
   settings     as entered
   explains     28 of 28 starts and stops in the log
   shown by     the start at 2026-06-02 06:00, after a pause of 7.1 h, at a
                surplus of 0.0 kW and a tank of 49.0 °C
   predicted    typical pause 43 min (observed 42 min), starts in the worst hour
                2 (observed 2), starts a day 13 (observed 14), runs that start
                between 8 and 18 h 71 % (observed 71 %), input not covered by
                surplus at starts by the relay 0 % (observed 0 %)
   to confirm   set the start 5 K below the stop: if this is it, each run lasts
                several times as long

note            surplus before heat pump and heater at starts by the relay: half
                of them from 2.6 to 4.9 kW (relay.start_kW 2.2 kW)
safety          A diagnosis ranks causes by what they would lead to; it proves
                none. Before work on site, isolate and prove dead; local codes
                and the equipment's own instructions take precedence, and
                electrical and unvented work is for licensed people.
