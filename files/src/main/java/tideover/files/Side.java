package tideover.files;

/** Where in a site something is stated. */
enum Side {
    /** As found. */
    HOUSE,
    PLAN
}
