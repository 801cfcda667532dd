package tideover.engine.wiring.colour;

/** Colours and their letter codes. Source: IEC 60757. */
public enum Hue {
    BK,
    BN,
    RD,
    OG,
    YE,
    GN,
    BU,
    VT,
    GY,
    WH,
    PK,
    TQ
}
