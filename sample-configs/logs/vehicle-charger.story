sample-configs/logs/vehicle-charger.txt: 24 values understood, 1 line not
understood, 0 ambiguous
understood      line 1: Site: Hazel Mews = site.reference Hazel Mews
                line 2: PV: 10.0 kW peak = solar.peak_kW 10 kW
                line 3: Tank: 273 litres = tank.volume_L 273 L
                line 4: No immersion heater = immersion.fitted false
                line 6: Relay calls the heat pump = relay.drives heat pump
                line 7: Relay counts: export = relay.counts [export]
                line 8: Relay start: 2.51 kW = relay.start_kW 2.51 kW
                line 9: Relay stop: 0.18 kW = relay.stop_kW 0.18 kW
                line 10: Relay start delay: 6.0 min = relay.startDelay_min 6 min
                line 11: Relay stop delay: 4.0 min = relay.stopDelay_min 4 min
                line 12: Heat pump power input on hot water: 2.1 kW =
                heatPump.hotWaterInput_kW 2.1 kW
                line 13: Heat pump heat output on hot water: 7.1 kW =
                heatPump.hotWaterOutput_kW 7.1 kW
                line 14: Heat pump maximum flow: 69 °C = heatPump.maximumFlow_C
                69 °C
                line 15: Flow above tank: 5 K = heatPump.flowAboveTank_K 5 K
                line 16: Heat pump start lag: 2 min = heatPump.startLag_min
                2 min
                line 17: Heat pump minimum run: 8 min = heatPump.minimumRun_min
                8 min
                line 18: Heat pump minimum off: 9 min = heatPump.minimumOff_min
                9 min
                line 19: Heat pump starts per hour: 3 = heatPump.startsPerHour 3
                line 20: Everyday hot water: start 45.0 °C, stop 53.0 °C =
                heatPump.everyday.start_C 45 °C, heatPump.everyday.stop_C 53 °C
                line 21: Surplus hot water: start 55.0 °C, stop 59.0 °C =
                heatPump.surplus.start_C 55 °C, heatPump.surplus.stop_C 59 °C
                line 22: No battery = battery.fitted false
                line 23: Vehicle charger follows surplus =
                vehicleCharger.followsSurplus true
not understood  line 5: No diverter

Hazel Mews                                                          FAULT LIKELY
sample-configs/logs/vehicle-charger.txt                 2026-06-02 to 2026-06-03

log             sample-configs/logs/vehicle-charger.csv: 2026-06-02 00:04 to
                2026-06-03 00:42, readings every 1 min, 1 gap, together 0.6 h
                grid (kW): grid power, import positive, power, kW, by its name;
                sign found: import positive, since it follows the PV power
                heat pump (kW): power input of the heat pump, power, kW, by its
                name
                pv (kW): PV power, power, kW, by its name
                tank (°C): tank temperature, temperature, °C, by its name
                vehicle (kW): power of the vehicle charger, power, kW, by its
                name
runs            3 runs found from the heat pump's own power; 3.0 a day, at most
                2 starts in an hour
starts          3 surplus at or above the relay's start
stops           2 tank at the programme's stop; 1 neither surplus nor tank
                temperature gives a reason
observed        typical run 13 min, starts in the worst hour 2, starts a day 3,
                runs that start between 8 and 18 h 100 %, tank rise while
                running 24 K/h, tank at the stop above tank at the start 5.3 K

1  99 %     Vehicle charger follows the same surplus
            vehicle-charger
   settings     as entered
   explains     5 of 5 starts and stops in the log
   shown by     the start at 2026-06-02 10:22, after a pause of 10.3 h, at a
                surplus of 6.4 kW and a tank of 41.3 °C
   predicted    starts in the worst hour 2 (observed 2), starts a day 3.9
                (observed 3), runs that start between 8 and 18 h 100 % (observed
                100 %), tank rise while running 22 K/h (observed 24 K/h), pauses
                without standby power 0 % (observed 0 %)
   to confirm   unplug the vehicle for a sunny hour: if this is it, the relay
                stays closed

note            sample-configs/logs/vehicle-charger.csv: dates taken as
                day/month/year: no row shows which
safety          A diagnosis ranks causes by what they would lead to; it proves
                none. Before work on site, isolate and prove dead; local codes
                and the equipment's own instructions take precedence, and
                electrical and unvented work is for licensed people.
