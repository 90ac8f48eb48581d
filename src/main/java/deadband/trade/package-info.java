/**
 * The formulas of the trade: plain functions of numbers, each with its unit in its name.
 *
 * <p>Nothing here knows a setup file, a rule or a screen. Symbols, units and sign conventions stand
 * on the nomenclature page; what changed in the physics, and when, on the page of physics changes.
 */
@NullMarked
package deadband.trade;

import org.jspecify.annotations.NullMarked;
