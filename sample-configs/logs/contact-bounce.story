sample-configs/logs/contact-bounce.txt: 24 values understood, 1 line not
understood, 0 ambiguous
understood      line 1: Site: Medlar Cottage = site.reference Medlar Cottage
                line 2: PV: 6.4 kW peak = solar.peak_kW 6.4 kW
                line 3: Tank: 240 litres = tank.volume_L 240 L
                line 4: No immersion heater = immersion.fitted false
                line 6: Relay calls the heat pump = relay.drives heat pump
                line 7: Relay counts: export = relay.counts [export]
                line 8: Relay start: 1.97 kW = relay.start_kW 1.97 kW
                line 9: Relay stop: -0.32 kW = relay.stop_kW -0.32 kW
                line 10: Relay start delay: 6.0 min = relay.startDelay_min 6 min
                line 11: Relay stop delay: 7.0 min = relay.stopDelay_min 7 min
                line 12: Heat pump power input on hot water: 1.8 kW =
                heatPump.hotWaterInput_kW 1.8 kW
                line 13: Heat pump heat output on hot water: 4.5 kW =
                heatPump.hotWaterOutput_kW 4.5 kW
                line 14: Heat pump maximum flow: 69 °C = heatPump.maximumFlow_C
                69 °C
                line 15: Flow above tank: 5 K = heatPump.flowAboveTank_K 5 K
                line 16: Heat pump start lag: 2 min = heatPump.startLag_min
                2 min
                line 17: Heat pump minimum run: 11 min = heatPump.minimumRun_min
                11 min
                line 18: Heat pump minimum off: 9 min = heatPump.minimumOff_min
                9 min
                line 19: Heat pump starts per hour: 3 = heatPump.startsPerHour 3
                line 20: Everyday hot water: start 47.0 °C, stop 52.0 °C =
                heatPump.everyday.start_C 47 °C, heatPump.everyday.stop_C 52 °C
                line 21: Surplus hot water: start 52.0 °C, stop 59.0 °C =
                heatPump.surplus.start_C 52 °C, heatPump.surplus.stop_C 59 °C
                line 22: No battery = battery.fitted false
                line 23: No vehicle charger = vehicleCharger.fitted false
not understood  line 5: No diverter

Medlar Cottage                                                      FAULT LIKELY
sample-configs/logs/contact-bounce.txt                  2026-06-02 to 2026-06-03

log             sample-configs/logs/contact-bounce.csv: 2026-06-02 00:04:53 to
                2026-06-03 00:04:53, readings every 1 min, no gaps
                grid (W): grid power, import positive, power, W, by its name;
                sign found: import positive, since it follows the PV power
                heat pump (W): power input of the heat pump, power, W, by its
                name
                pv (W): PV power, power, W, by its name
                tank (°C): tank temperature, temperature, °C, by its name
runs            13 runs found from the heat pump's own power; 13.0 a day, at
                most 3 starts in an hour
starts          10 surplus at or above the relay's start; 3 tank at or below the
                programme's start
stops           5 tank at the programme's stop; 5 surplus between start and
                stop, where the heat pump's own input opens the relay; 2 neither
                surplus nor tank temperature gives a reason; 1 surplus fell
                below the relay's start
observed        typical run 14 min, typical pause 55 min, starts in the worst
                hour 3, starts a day 13, runs that start between 8 and 18 h
                69 %, tank rise while running 16 K/h, tank at the stop above
                tank at the start 4.1 K

1  99 %     Call contact opens again by itself: loose terminal or bouncing
            contact
            contact-bounce
   settings     contact opens again by itself
   explains     25 of 26 starts and stops in the log
   shown by     the stop at 2026-06-02 11:25, after a run of 13 min, at a
                surplus of 4.6 kW and a tank of 53.5 °C
   predicted    typical run 14 min (observed 14 min), typical pause 56 min
                (observed 55 min), starts in the worst hour 2 (observed 3),
                starts a day 13 (observed 13), runs that start between 8 and
                18 h 69 % (observed 69 %)
   to confirm   tighten the terminals, then bridge the call input at the heat
                pump for an hour of surplus: if this is it, it runs through

note            surplus before heat pump and heater at starts by the relay: half
                of them from 2.1 to 3.8 kW (relay.start_kW 2.0 kW)
                surplus before heat pump and heater at stops by the relay: half
                of them from 2.3 to 3.1 kW (relay.stop_kW -0.3 kW)
safety          A diagnosis ranks causes by what they would lead to; it proves
                none. Before work on site, isolate and prove dead; local codes
                and the equipment's own instructions take precedence, and
                electrical and unvented work is for licensed people.
