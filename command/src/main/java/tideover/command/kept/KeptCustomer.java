package tideover.command.kept;

/** A customer, as far as a list tells. */
public record KeptCustomer(String id, String name, String town) {}
