/** Customers and whom to call about their houses: apart from every site, and erased when they are to be forgotten. */
@NullMarked
package tideover.web.customers;

import org.jspecify.annotations.NullMarked;
