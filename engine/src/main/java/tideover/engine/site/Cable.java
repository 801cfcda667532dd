package tideover.engine.site;

import org.jspecify.annotations.Nullable;

/**
 * A run of cable or of single conductors.
 *
 * @param lengthM                   one way [m]
 * @param crossSectionMm2           of each line conductor [mm²]
 * @param neutralCrossSectionMm2    of the neutral; nothing means: as the lines [mm²]
 * @param protectiveCrossSectionMm2 of PE or PEN; nothing means: as the lines [mm²]
 * @param material                  copper or aluminium
 * @param insulation                its name stands for the highest conductor temperature
 * @param method                    reference method of installation
 * @param groupedCircuits           loaded circuits bunched together, this one counted, 1 or more
 * @param ambientDegC               temperature of the air or, buried, of the soil [°C]
 */
public record Cable(
        @Nullable Double lengthM,
        @Nullable Double crossSectionMm2,
        @Nullable Double neutralCrossSectionMm2,
        @Nullable Double protectiveCrossSectionMm2,
        @Nullable Material material,
        @Nullable Insulation insulation,
        @Nullable InstallationMethod method,
        @Nullable Integer groupedCircuits,
        @Nullable Double ambientDegC) {}
