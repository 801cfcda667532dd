package tideover.engine.site;

import org.jspecify.annotations.Nullable;

/**
 * What a circuit feeds.
 *
 * @param kind                 kind of load
 * @param powerW               largest active power at once, over all lines [W]
 * @param powerFactorRatio     cos φ, 0 to 1
 * @param demandCurrentA       largest logged current per line [A]; overrides the estimate from power
 * @param converter            what the electronics inside can let flow to earth
 * @param equipmentClass       protection class of what is connected
 * @param thirdHarmonicRatio   third harmonic over the whole line current, r.m.s., 0 to 1; in the neutral those of three
 *                             lines add
 * @param start                how a motor is started
 * @param startCurrentRatio    starting current over running current
 * @param startTimeS           duration of the start [s]
 * @param residualType         type of RCD the maker of the load demands
 */
public record Load(
        @Nullable LoadKind kind,
        @Nullable Double powerW,
        @Nullable Double powerFactorRatio,
        @Nullable Double demandCurrentA,
        @Nullable Converter converter,
        @Nullable EquipmentClass equipmentClass,
        @Nullable Double thirdHarmonicRatio,
        @Nullable StartKind start,
        @Nullable Double startCurrentRatio,
        @Nullable Double startTimeS,
        @Nullable RcdType residualType) {}
