package tideover.store.customer;

import tideover.store.database.Ids;

/**
 * The lasting name of a customer.
 *
 * @param text 16 hexadecimal digits, drawn at random
 */
public record CustomerId(String text) {
    public CustomerId {
        Ids.require(text);
    }

    static CustomerId fresh() {
        return new CustomerId(Ids.fresh());
    }

    @Override
    public String toString() {
        return text;
    }
}
