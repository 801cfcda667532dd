package tideover.web.attachments;

/**
 * One photo or document.
 *
 * @param address where it is downloaded
 * @param picture where it is shown as a picture; empty for what is none
 * @param removal where it is taken away
 * @param name    of the file
 * @param note    what was said to it
 * @param about   size, day and whether it is personal, worded
 */
public record Photo(String address, String picture, String removal, String name, String note, String about) {}
