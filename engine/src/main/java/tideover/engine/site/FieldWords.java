package tideover.engine.site;

/**
 * What the facts of a site are called in the trade, and how one gets them. The field table in {@code files} holds them;
 * it is handed in wherever a fact is named to a person or open findings are grouped.
 */
public interface FieldWords {
    /**
     * Short label of a field.
     *
     * @param section as {@link ThingKind#sectionOf(Thing)} says
     * @param field   path of the field inside the thing, such as {@code cable.lengthM}
     * @return such as "length of cable"
     * @throws IllegalArgumentException if there is no such field
     */
    String words(String section, String field);

    /**
     * How one gets the fact.
     *
     * @throws IllegalArgumentException if there is no such field
     */
    FactSource source(String section, String field);
}
