sample-configs/logs/second-controller.txt: 24 values understood, 1 line not
understood, 0 ambiguous
understood      line 1: Site: Ferncombe = site.reference Ferncombe
                line 2: PV: 5.1 kW peak = solar.peak_kW 5.1 kW
                line 3: Tank: 205 litres = tank.volume_L 205 L
                line 4: No immersion heater = immersion.fitted false
                line 6: Relay calls the heat pump = relay.drives heat pump
                line 7: Relay counts: export = relay.counts [export]
                line 8: Relay start: 3.04 kW = relay.start_kW 3.04 kW
                line 9: Relay stop: -0.20 kW = relay.stop_kW -0.2 kW
                line 10: Relay start delay: 6.0 min = relay.startDelay_min 6 min
                line 11: Relay stop delay: 7.0 min = relay.stopDelay_min 7 min
                line 12: Heat pump power input on hot water: 2.8 kW =
                heatPump.hotWaterInput_kW 2.8 kW
                line 13: Heat pump heat output on hot water: 7.7 kW =
                heatPump.hotWaterOutput_kW 7.7 kW
                line 14: Heat pump maximum flow: 72 °C = heatPump.maximumFlow_C
                72 °C
                line 15: Flow above tank: 5 K = heatPump.flowAboveTank_K 5 K
                line 16: Heat pump start lag: 1 min = heatPump.startLag_min
                1 min
                line 17: Heat pump minimum run: 10 min = heatPump.minimumRun_min
                10 min
                line 18: Heat pump minimum off: 12 min = heatPump.minimumOff_min
                12 min
                line 19: Heat pump starts per hour: 3 = heatPump.startsPerHour 3
                line 20: Everyday hot water: start 48.0 °C, stop 53.0 °C =
                heatPump.everyday.start_C 48 °C, heatPump.everyday.stop_C 53 °C
                line 21: Surplus hot water: start 54.0 °C, stop 61.0 °C =
                heatPump.surplus.start_C 54 °C, heatPump.surplus.stop_C 61 °C
                line 22: No battery = battery.fitted false
                line 23: No vehicle charger = vehicleCharger.fitted false
not understood  line 5: No diverter

Ferncombe                                                           FAULT LIKELY
sample-configs/logs/second-controller.txt               2026-06-02 to 2026-06-03

log             sample-configs/logs/second-controller.csv: 2026-06-02 00:07:32
                to 2026-06-03 00:07:32, readings every 1 min, no gaps
                grid (W): grid power, import positive, power, W, by its name;
                sign found: import positive, since it follows the PV power
                heat pump (W): power input of the heat pump, power, W, by its
                name
                pv (W): PV power, power, W, by its name
                tank (°C): tank temperature, temperature, °C, by its name
runs            5 runs found from the heat pump's own power; 5.0 a day, at most
                1 start in an hour
starts          3 surplus at or above the relay's start; 1 surplus near the
                relay's start, but below it; 1 tank already warm, without
                surplus: disinfection or another programme
stops           3 neither surplus nor tank temperature gives a reason; 2 tank at
                the programme's stop
observed        typical run 13 min, starts in the worst hour 1, starts a day 5,
                runs that start between 8 and 18 h 60 %, input not covered by
                surplus at starts by the relay 41 %, tank rise while running
                33 K/h, tank at the stop above tank at the start 7.2 K

1  92 %     A second controller or writer calls the heat pump too
            second-controller
   settings     call set and reset by another
   explains     8 of 10 starts and stops in the log
   shown by     the start at 2026-06-02 08:21, after a pause of 8.2 h, at a
                surplus of 1.7 kW and a tank of 52.8 °C
   predicted    runs that start between 8 and 18 h 47 % (observed 60 %), starts
                in the worst hour 1 (observed 1), tank rise while running 32 K/h
                (observed 33 K/h), pauses without standby power 0 % (observed
                0 %), typical run 3.3 min (observed 13 min)
   to confirm   disconnect the surplus relay for an hour: if this is it, the
                heat pump starts all the same

2  7 %      Nothing unusual: weather, draw-off, defrosting or space heating
            nothing-unusual
   settings     as entered
   explains     4 of 10 starts and stops in the log
   predicted    starts a day 4 (observed 5), typical run 14 min (observed
                13 min), starts in the worst hour 1 (observed 1), tank rise
                while running 32 K/h (observed 33 K/h), pauses without standby
                power 0 % (observed 0 %)
   to confirm   log another week: if this is it, the runs stay as long and as
                few

note            surplus before heat pump and heater at starts by the relay: half
                of them from 1.7 to 3.9 kW (relay.start_kW 3.0 kW)
safety          A diagnosis ranks causes by what they would lead to; it proves
                none. Before work on site, isolate and prove dead; local codes
                and the equipment's own instructions take precedence, and
                electrical and unvented work is for licensed people.
