package tideover.engine.site;

import org.jspecify.annotations.Nullable;

/**
 * One core of a control cable, or one single wire.
 *
 * @param mark its number or colour, as printed on it; a colour as the code of IEC 60757
 * @param from terminal at which it begins; nothing: a spare core
 * @param to   terminal at which it ends; nothing: a spare core
 */
public record Core(
        @Nullable String mark,
        @Nullable TerminalId from,
        @Nullable TerminalId to) {}
