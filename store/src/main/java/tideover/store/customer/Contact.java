package tideover.store.customer;

/**
 * Somebody to call about a customer's house.
 *
 * @param role such as caretaker; every part is empty where nobody said
 */
public record Contact(String role, String name, String phone, String mail) {}
