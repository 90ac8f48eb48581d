package deadband.setup;

import deadband.document.Pointer;
import java.time.LocalDate;

/** A finding accepted with a reason. */
public record Accepted(
    Part part,
    @Described("name of the check") Told<String> check,
    @Described("why it is accepted") Told<String> reason,
    @Described("who accepts it") Told<String> by,
    @Described("date of acceptance") Told<LocalDate> on,
    @Described("last day of validity") Told<LocalDate> until,
    @Described("value that stays missing, as a JSON Pointer") Told<Pointer> pointer) {}
