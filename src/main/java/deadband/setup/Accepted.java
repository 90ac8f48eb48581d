package deadband.setup;

import deadband.document.Pointer;
import java.time.LocalDate;

/** A finding accepted with a reason. */
public record Accepted(
    Part part,
    @Described("name of the check")
        @Asked(value = "Which check does the acceptance name?", where = Asked.Where.PAPERS)
        Entered<String> check,
    @Described("why it is accepted")
        @Asked(value = "Why is the finding accepted?", where = Asked.Where.PAPERS)
        Entered<String> reason,
    @Described("who accepts it")
        @Asked(value = "Who accepts the finding?", where = Asked.Where.PAPERS)
        Entered<String> by,
    @Described("date of acceptance")
        @Asked(value = "On which date was the finding accepted?", where = Asked.Where.PAPERS)
        Entered<LocalDate> on,
    @Described("last day of validity")
        @Asked(value = "Until which date is the finding accepted?", where = Asked.Where.PAPERS)
        Entered<LocalDate> until,
    @Described("value that stays missing, as a JSON Pointer")
        @Asked(value = "Which value stays missing?", where = Asked.Where.PAPERS)
        Entered<Pointer> pointer) {}
