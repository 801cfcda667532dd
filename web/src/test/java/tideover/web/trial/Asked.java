package tideover.web.trial;

/** A workbench that can be asked, in this process or in one of its own. */
interface Asked {
    /** The whole address of a path. */
    String at(String path);

    /** An address that lets in once. */
    String startAddress();

    /** What programs send to be let in. */
    String key();
}
