package tideover.web.sites;

import tideover.web.page.Frame;

/**
 * What is done with a site beside working on it.
 *
 * @param address of the variant
 */
public record Folder(Frame frame, String address) {}
