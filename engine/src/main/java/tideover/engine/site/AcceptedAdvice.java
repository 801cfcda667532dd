package tideover.engine.site;

/**
 * A finding of force ADVISED that the planner accepts as it is; the reason is printed.
 *
 * @param check  id of the check
 * @param place  thing at which it was found
 * @param reason why it is left so
 */
public record AcceptedAdvice(String check, ThingId place, String reason) {}
