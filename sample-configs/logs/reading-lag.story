sample-configs/logs/reading-lag.txt: 25 values understood, 1 line not
understood, 0 ambiguous
understood      line 1: Site: Kestrel Yard = site.reference Kestrel Yard
                line 2: PV: 8.6 kW peak = solar.peak_kW 8.6 kW
                line 3: Tank: 275 litres = tank.volume_L 275 L
                line 4: No immersion heater = immersion.fitted false
                line 6: Relay calls the heat pump = relay.drives heat pump
                line 7: Relay counts: export, battery = relay.counts [export,
                battery]
                line 8: Relay start: 3.44 kW = relay.start_kW 3.44 kW
                line 9: Relay stop: 0.05 kW = relay.stop_kW 0.05 kW
                line 10: Relay start delay: 3.0 min = relay.startDelay_min 3 min
                line 11: Relay stop delay: 6.0 min = relay.stopDelay_min 6 min
                line 12: Heat pump power input on hot water: 2.9 kW =
                heatPump.hotWaterInput_kW 2.9 kW
                line 13: Heat pump heat output on hot water: 7.2 kW =
                heatPump.hotWaterOutput_kW 7.2 kW
                line 14: Heat pump maximum flow: 70 °C = heatPump.maximumFlow_C
                70 °C
                line 15: Flow above tank: 5 K = heatPump.flowAboveTank_K 5 K
                line 16: Heat pump start lag: 3 min = heatPump.startLag_min
                3 min
                line 17: Heat pump minimum run: 11 min = heatPump.minimumRun_min
                11 min
                line 18: Heat pump minimum off: 14 min = heatPump.minimumOff_min
                14 min
                line 19: Heat pump starts per hour: 3 = heatPump.startsPerHour 3
                line 20: Everyday hot water: start 47.0 °C, stop 52.0 °C =
                heatPump.everyday.start_C 47 °C, heatPump.everyday.stop_C 52 °C
                line 21: Surplus hot water: start 52.0 °C, stop 60.0 °C =
                heatPump.surplus.start_C 52 °C, heatPump.surplus.stop_C 60 °C
                line 22: Battery: 8 kWh, 3 kW = battery.capacity_kWh 8 kWh,
                battery.power_kW 3 kW
                line 23: No vehicle charger = vehicleCharger.fitted false
not understood  line 5: No diverter

Kestrel Yard                                                        FAULT LIKELY
sample-configs/logs/reading-lag.txt                     2026-05-31 to 2026-06-01

log             sample-configs/logs/reading-lag.csv: 2026-05-31 23:53 to
                2026-06-01 23:53, readings every 1 min, no gaps
                grid (kW): grid power, import positive, power, kW, by its name;
                sign found: import positive, since it follows the PV power
                heat pump (kW): power input of the heat pump, power, kW, by its
                name
                pv (kW): PV power, power, kW, by its name
                tank (°C): tank temperature, temperature, °C, by its name
                battery (kW): battery power, power, kW, by its name
runs            5 runs found from the heat pump's own power; 5.0 a day, at most
                1 start in an hour
starts          4 surplus at or above the relay's start; 1 tank at or below the
                programme's start
stops           5 tank at the programme's stop
observed        typical run 13 min, starts in the worst hour 1, starts a day 5,
                runs that start between 8 and 18 h 60 %, tank rise while running
                21 K/h, tank at the stop above tank at the start 5.5 K

1  94 %     Controller acts minutes late on what it reads
            reading-lag
   settings     reading about 8 min late
   explains     10 of 10 starts and stops in the log
   shown by     the start at 2026-06-01 08:58, after a pause of 116 min, at a
                surplus of 1.9 kW and a tank of 50.8 °C
   predicted    starts a day 6 (observed 5), runs that start between 8 and 18 h
                50 % (observed 60 %), starts in the worst hour 1 (observed 1),
                tank rise while running 22 K/h (observed 21 K/h), pauses without
                standby power 0 % (observed 0 %)
   to confirm   switch a 2 kW load on: if this is it, the controller's display
                follows only minutes later; or log input not covered by surplus
                at starts by the relay: 32 % with this, 0 % with nothing-unusual

2  5 %      Nothing unusual: weather, draw-off, defrosting or space heating
            nothing-unusual
   settings     as entered
   explains     9 of 10 starts and stops in the log
   predicted    typical run 15 min (observed 13 min), starts in the worst hour 1
                (observed 1), tank rise while running 22 K/h (observed 21 K/h),
                pauses without standby power 0 % (observed 0 %), runs that start
                between 8 and 18 h 71 % (observed 60 %)
   to confirm   log another week: if this is it, the runs stay as long and as
                few; or log input not covered by surplus at starts by the relay:
                0 % with this, 32 % with reading-lag

note            surplus before heat pump and heater at starts by the relay: half
                of them from 1.7 to 3.9 kW (relay.start_kW 3.4 kW)
safety          A diagnosis ranks causes by what they would lead to; it proves
                none. Before work on site, isolate and prove dead; local codes
                and the equipment's own instructions take precedence, and
                electrical and unvented work is for licensed people.
