package tideover.store.customer;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A customer.
 *
 * @param facts       {@link CustomerFacts#NONE} once forgotten
 * @param forgottenAt nothing unless everything about the person was erased
 */
public record Customer(
        CustomerId id, CustomerFacts facts, @Nullable Instant forgottenAt) {}
