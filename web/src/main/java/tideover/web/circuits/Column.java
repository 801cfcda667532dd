package tideover.web.circuits;

import java.util.Locale;

/** Columns of the circuits sheet. */
enum Column {
    DESIGNATION("designation", Align.START),
    CONDUCTORS("conductors", Align.START),
    PROTECTION("protection", Align.START),
    RCD_TYPE("rcd.type", Align.START),
    CROSS_SECTION("cable.crossSectionMm2", Align.END),
    METHOD("cable.method", Align.START),
    LENGTH("cable.lengthM", Align.END),
    LOAD("load.kind", Align.START),
    POWER("load.powerW", Align.END),
    IMPORTANCE("importance", Align.START);

    private final String field;
    private final Align align;

    /** On which side of a cell its text stands. */
    enum Align {
        START,
        END
    }

    Column(String field, Align align) {
        this.field = field;
        this.align = align;
    }

    /** The fact inside a circuit. */
    String field() {
        return field;
    }

    /** The row of the field table. */
    String path() {
        return "circuits." + field;
    }

    Align align() {
        return align;
    }

    /** Whether one of a few words stands in it. */
    boolean hasList() {
        return this == RCD_TYPE || this == METHOD || this == LOAD || this == IMPORTANCE;
    }

    /** Its heading in the bundle. */
    String key() {
        return "circuits.column." + name().toLowerCase(Locale.ROOT);
    }
}
