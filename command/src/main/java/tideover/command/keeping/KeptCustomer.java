package tideover.command.keeping;

/** A customer, as far as a list tells. */
record KeptCustomer(String id, String name, String town) {}
