package deadband.setup;

import deadband.document.Pointer;
import java.time.LocalDate;

/** A finding accepted with a reason. */
public record Accepted(
    Part part,
    @Described("name of the check") Entered<String> check,
    @Described("why it is accepted") Entered<String> reason,
    @Described("who accepts it") Entered<String> by,
    @Described("date of acceptance") Entered<LocalDate> on,
    @Described("last day of validity") Entered<LocalDate> until,
    @Described("value that stays missing, as a JSON Pointer") Entered<Pointer> pointer) {}
