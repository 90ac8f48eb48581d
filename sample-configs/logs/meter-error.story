sample-configs/logs/meter-error.txt: 24 values understood, 1 line not
understood, 0 ambiguous
understood      line 1: Site: Juniper Lane = site.reference Juniper Lane
                line 2: PV: 5.7 kW peak = solar.peak_kW 5.7 kW
                line 3: Tank: 198 litres = tank.volume_L 198 L
                line 4: No immersion heater = immersion.fitted false
                line 6: Relay calls the heat pump = relay.drives heat pump
                line 7: Relay counts: export = relay.counts [export]
                line 8: Relay start: 3.23 kW = relay.start_kW 3.23 kW
                line 9: Relay stop: -0.10 kW = relay.stop_kW -0.1 kW
                line 10: Relay start delay: 6.0 min = relay.startDelay_min 6 min
                line 11: Relay stop delay: 6.0 min = relay.stopDelay_min 6 min
                line 12: Heat pump power input on hot water: 2.8 kW =
                heatPump.hotWaterInput_kW 2.8 kW
                line 13: Heat pump heat output on hot water: 8.9 kW =
                heatPump.hotWaterOutput_kW 8.9 kW
                line 14: Heat pump maximum flow: 70 °C = heatPump.maximumFlow_C
                70 °C
                line 15: Flow above tank: 5 K = heatPump.flowAboveTank_K 5 K
                line 16: Heat pump start lag: 2 min = heatPump.startLag_min
                2 min
                line 17: Heat pump minimum run: 11 min = heatPump.minimumRun_min
                11 min
                line 18: Heat pump minimum off: 8 min = heatPump.minimumOff_min
                8 min
                line 19: Heat pump starts per hour: 3 = heatPump.startsPerHour 3
                line 20: Everyday hot water: start 43.0 °C, stop 50.0 °C =
                heatPump.everyday.start_C 43 °C, heatPump.everyday.stop_C 50 °C
                line 21: Surplus hot water: start 51.0 °C, stop 59.0 °C =
                heatPump.surplus.start_C 51 °C, heatPump.surplus.stop_C 59 °C
                line 22: No battery = battery.fitted false
                line 23: No vehicle charger = vehicleCharger.fitted false
not understood  line 5: No diverter

Juniper Lane                                                        FAULT LIKELY
sample-configs/logs/meter-error.txt                     2026-06-01 to 2026-06-02

log             sample-configs/logs/meter-error.csv: 2026-06-01 00:11:10 to
                2026-06-02 00:11:10, readings every 1 min, no gaps
                grid (W): grid power, import positive, power, W, by its name;
                sign found: import positive, since it follows the PV power
                heat pump (W): power input of the heat pump, power, W, by its
                name
                pv (W): PV power, power, W, by its name
                tank (°C): tank temperature, temperature, °C, by its name
runs            6 runs found from the heat pump's own power; 6.0 a day, at most
                1 start in an hour
starts          3 surplus at or above the relay's start; 1 surplus near the
                relay's start, but below it; 1 tank at or below the programme's
                start; 1 tank already warm, without surplus: disinfection or
                another programme
stops           5 tank at the programme's stop; 1 neither surplus nor tank
                temperature gives a reason
observed        typical run 14 min, starts in the worst hour 1, starts a day 6,
                runs that start between 8 and 18 h 67 %, input not covered by
                surplus at starts by the relay 15 %, tank rise while running
                39 K/h, tank at the stop above tank at the start 9.3 K

1  86 %     Controller reads the surplus too high or too low
            meter-error
   settings     surplus read about 1.4 kW too high
   explains     11 of 12 starts and stops in the log
   shown by     the start at 2026-06-01 18:16, after a pause of 46 min, at a
                surplus of 0.0 kW and a tank of 49.6 °C
   predicted    input not covered by surplus at starts by the relay 27 %
                (observed 15 %), runs that start between 8 and 18 h 60 %
                (observed 67 %), starts in the worst hour 1 (observed 1), starts
                a day 5 (observed 6), tank rise while running 39 K/h (observed
                39 K/h)
   to confirm   compare its reading with the supply meter, once with a kettle on
                and once without: if this is it, they differ by as much both
                times

2  14 %     Start lies below the heat pump's power input: it imports from the
            first minute
            start-below-input
   settings     start in force lower than entered
   explains     11 of 12 starts and stops in the log
   shown by     the start at 2026-06-01 18:16, after a pause of 46 min, at a
                surplus of 0.0 kW and a tank of 49.6 °C
   predicted    typical run 20 min (observed 14 min), starts in the worst hour 1
                (observed 1), starts a day 5 (observed 6), tank rise while
                running 39 K/h (observed 39 K/h), pauses without standby power
                0 % (observed 0 %)
   to confirm   read the supply meter just after a start by the relay: if this
                is it, it shows import of the heat pump's input less
                relay.start_kW

note            surplus before heat pump and heater at starts by the relay: half
                of them from 2.2 to 4.2 kW (relay.start_kW 3.2 kW)
safety          A diagnosis ranks causes by what they would lead to; it proves
                none. Before work on site, isolate and prove dead; local codes
                and the equipment's own instructions take precedence, and
                electrical and unvented work is for licensed people.
