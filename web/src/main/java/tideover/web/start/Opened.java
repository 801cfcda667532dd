package tideover.web.start;

import java.nio.file.Path;
import tideover.files.FieldTable;
import tideover.store.Store;

/**
 * What there is before the workbench starts.
 *
 * @param store  closed with the workbench
 * @param folder where it lies
 */
record Opened(Store store, Path folder, FieldTable fields, Preparation preparation) {}
