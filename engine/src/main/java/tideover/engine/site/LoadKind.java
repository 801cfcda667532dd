package tideover.engine.site;

/** What a circuit feeds. */
public enum LoadKind {
    /** Socket-outlets for general use. */
    SOCKETS,
    LIGHTING,
    /** Fixed equipment not named otherwise. */
    FIXED,
    COOKING,
    HEAT_PUMP,
    /** Instantaneous or storage heater. */
    WATER_HEATER,
    CAR_CHARGER,
    SAUNA,
    PUMP,
    MOTOR,
    VENTILATION,
    /** Heating control, doors, alarms, network. */
    CONTROL,
    /** Somebody's health hangs on it. */
    MEDICAL,
    /** Feeds an outbuilding or another board not surveyed further. */
    SUB_SUPPLY
}
