package deadband.topics.grid;

import static deadband.setup.Unit.KILOWATT;

import deadband.facts.Bound;
import deadband.facts.Case;
import deadband.facts.Detail;
import deadband.facts.Evidence;
import deadband.facts.Facts;
import deadband.facts.Measure;
import deadband.facts.Quantity;
import deadband.loop.RelayLoop;
import deadband.provenance.Derived;
import deadband.setup.Entered;
import deadband.setup.Setup;

/** What an export margin below zero imports, against what the grid sensor can tell from nothing. */
public record ExportMarginBelowZero(Evidence evidence, Quantity import_kW, Quantity error_kW)
    implements Case {

  public static void derive(Setup setup, Facts facts) {
    Entered<Double> margin = setup.diverter().exportMargin_kW();
    RelayLoop loop = new RelayLoop(setup);
    Derived<Double> bought =
        loop.heaterFitted()
            .then(
                fitted ->
                    Derived.of(margin).map(export_kW -> KILOWATT.round(Math.max(0, -export_kW))));
    Derived<Double> error = loop.coarseSensorError_kW(bought);
    facts
        .into(ExportMarginBelowZero.class, margin.pointer())
        .given(bought, error)
        .makes(
            because ->
                new ExportMarginBelowZero(
                    because.explained(() -> withinError(margin, bought.get(), error.get())),
                    because.quantity(bought),
                    because.quantity(error)));
  }

  private static Detail withinError(Entered<Double> margin, double bought_kW, double error_kW) {
    return Detail.at(margin)
        .observed(Measure.of("import while the element runs", bought_kW, KILOWATT))
        .limit(
            Bound.calculated(
                "error of the grid sensor",
                error_kW,
                KILOWATT,
                "accuracy class of the grid sensor"))
        .basis("sign of the export margin, and the error of the grid sensor by its class")
        .done();
  }
}
