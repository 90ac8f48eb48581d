sample-configs/logs/buffer-too-small.txt: 27 values understood, 0 lines not
understood, 0 ambiguous
understood      line 1: Site: Elderfield = site.reference Elderfield
                line 2: PV: 6.2 kW peak = solar.peak_kW 6.2 kW
                line 3: Tank: 196 litres = tank.volume_L 196 L
                line 4: Immersion heater: 3 kW at 230 V = immersion.power_kW
                3 kW, immersion.ratedAt_V 230 V
                line 5: Diverter minimum: 0.15 kW = diverter.minimum_kW 0.15 kW
                line 6: Relay calls the heat pump = relay.drives heat pump
                line 7: Relay counts: export, immersion, battery = relay.counts
                [export, immersion, battery]
                line 8: Relay start: 3.25 kW = relay.start_kW 3.25 kW
                line 9: Relay stop: 0.23 kW = relay.stop_kW 0.23 kW
                line 10: Relay start delay: 6.0 min = relay.startDelay_min 6 min
                line 11: Relay stop delay: 7.0 min = relay.stopDelay_min 7 min
                line 12: Heat pump power input on hot water: 2.6 kW =
                heatPump.hotWaterInput_kW 2.6 kW
                line 13: Heat pump heat output on hot water: 6.6 kW =
                heatPump.hotWaterOutput_kW 6.6 kW
                line 14: Heat pump maximum flow: 67 °C = heatPump.maximumFlow_C
                67 °C
                line 15: Flow above tank: 5 K = heatPump.flowAboveTank_K 5 K
                line 16: Heat pump start lag: 3 min = heatPump.startLag_min
                3 min
                line 17: Heat pump minimum run: 3 min = heatPump.minimumRun_min
                3 min
                line 18: Heat pump minimum off: 3 min = heatPump.minimumOff_min
                3 min
                line 19: Heat pump starts per hour: 3 = heatPump.startsPerHour 3
                line 20: Everyday hot water: start 43.0 °C, stop 50.0 °C =
                heatPump.everyday.start_C 43 °C, heatPump.everyday.stop_C 50 °C
                line 21: Surplus hot water: start 52.0 °C, stop 57.0 °C =
                heatPump.surplus.start_C 52 °C, heatPump.surplus.stop_C 57 °C
                line 22: Battery: 8 kWh, 3 kW = battery.capacity_kWh 8 kWh,
                battery.power_kW 3 kW
                line 23: No vehicle charger = vehicleCharger.fitted false

Elderfield                                                          FAULT LIKELY
sample-configs/logs/buffer-too-small.txt                2026-06-01 to 2026-06-02

log             sample-configs/logs/buffer-too-small.csv: 2026-06-01 00:09 to
                2026-06-02 00:09, readings every 1 min, no gaps
                grid (kW): grid power, import positive, power, kW, by its name;
                sign found: import positive, since it follows the PV power
                heat pump (kW): power input of the heat pump, power, kW, by its
                name
                pv (kW): PV power, power, kW, by its name
                tank (°C): tank temperature, temperature, °C, by its name
                immersion (kW): power of the immersion heater, power, kW, by its
                name
                battery (kW): battery power, power, kW, by its name
runs            51 runs found from the heat pump's own power; 51.0 a day, at
                most 3 starts in an hour
starts          22 tank already warm, without surplus: disinfection or another
                programme; 14 neither surplus nor tank temperature gives a
                reason; 11 surplus at or above the relay's start; 4 surplus near
                the relay's start, but below it
stops           31 neither surplus nor tank temperature gives a reason; 18 tank
                at the programme's stop; 2 surplus fell below the relay's start
observed        typical run 11 min, typical pause 13 min, starts in the worst
                hour 3, starts a day 51, runs that start between 8 and 18 h
                31 %, input not covered by surplus at starts by the relay 11 %,
                tank rise while running 0.3 K/h, tank at the stop above tank at
                the start 0 K, battery's share of the runs without surplus 7 %

1  98 %     Heating buffer is too small for the minimum heat output
            buffer-too-small
   settings     size of the buffer not entered
   explains     95 of 102 starts and stops in the log
   shown by     the start at 2026-06-01 17:04, after a pause of 11 min, at a
                surplus of 2.4 kW and a tank of 52.1 °C
   predicted    typical run 13 min (observed 11 min), typical pause 15 min
                (observed 13 min), starts in the worst hour 3 (observed 3),
                pauses without standby power 0 % (observed 0 %), battery's share
                of the runs without surplus 8 % (observed 7 %)
   to confirm   switch hot water off for an hour: if this is it, the heat pump
                cycles on

note            sample-configs/logs/buffer-too-small.csv: dates taken as
                day/month/year: no row shows which
                surplus before heat pump and heater at starts by the relay: half
                of them from 2.4 to 4.4 kW (relay.start_kW 3.2 kW)
safety          A diagnosis ranks causes by what they would lead to; it proves
                none. Before work on site, isolate and prove dead; local codes
                and the equipment's own instructions take precedence, and
                electrical and unvented work is for licensed people.
