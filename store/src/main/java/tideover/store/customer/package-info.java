/**
 * Customers and their contacts: the only place where people's names and addresses are kept, apart from every revision, so
 * that {@link tideover.store.customer.Customers#forget} can erase them. No formulas of the trade.
 */
@NullMarked
package tideover.store.customer;

import org.jspecify.annotations.NullMarked;
