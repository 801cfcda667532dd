package tideover.engine.site;

import org.jspecify.annotations.Nullable;

/**
 * A residual current device, alone or in one housing with an overcurrent device (RCBO).
 *
 * @param type                  what residual currents it sees
 * @param delay                 general or selective (type S)
 * @param ratedResidualCurrentA rated residual operating current [A]; 30 mA is 0.03
 * @param ratedCurrentA         rated load current [A]; nothing for an RCBO, whose overcurrent device limits it
 * @param feedDirection         from which side it may be fed
 */
public record ResidualDevice(
        @Nullable RcdType type,
        @Nullable RcdDelay delay,
        @Nullable Double ratedResidualCurrentA,
        @Nullable Double ratedCurrentA,
        @Nullable FeedDirection feedDirection) {}
