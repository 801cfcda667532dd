package tideover.engine.network;

import tideover.engine.site.InstallationMethod;

/** What takes up the heat of a cable. */
public enum Surroundings {
    AIR,
    SOIL;

    /** What surrounds a cable laid by a reference method. */
    public static Surroundings of(InstallationMethod method) {
        return switch (method) {
            case A1, A2, B1, B2, C, E -> AIR;
            case D1, D2 -> SOIL;
        };
    }
}
