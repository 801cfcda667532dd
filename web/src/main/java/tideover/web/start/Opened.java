package tideover.web.start;

import java.nio.file.Path;
import tideover.files.FieldTable;
import tideover.store.Store;
import tideover.web.work.RulesByCountry;

/**
 * What there is before the workbench starts.
 *
 * @param store  closed with the workbench
 * @param folder where it lies
 * @param rules  what sites are judged by
 */
record Opened(Store store, Path folder, FieldTable fields, RulesByCountry rules, Preparation preparation) {}
