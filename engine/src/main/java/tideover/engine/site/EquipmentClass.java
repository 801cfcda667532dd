package tideover.engine.site;

/** Protection class of equipment (IEC 61140). */
public enum EquipmentClass {
    /** Exposed parts need the protective conductor. */
    I,
    /** Double insulation. */
    II
}
