package tideover.store.attachment;

import java.text.Normalizer;
import java.util.regex.Pattern;

/** Names of files that came from elsewhere, made fit for every disk and every eye. */
final class FileName {
    private static final int LONGEST = 80;
    /** What no name may hold: separators, what some system reserves, what cannot be seen or turns the writing round. */
    private static final Pattern UNFIT =
            Pattern.compile("[\\p{Cntrl}\\p{Cf}\\p{Zl}\\p{Zp}\\p{Co}\\p{Cn}\\p{Cs}<>:\"|?*;%]");

    private static final Pattern BLANKS = Pattern.compile("\\s+");
    /** Devices of one system, with any ending. */
    private static final Pattern RESERVED = Pattern.compile("(?i)(con|prn|aux|nul|com\\d|lpt\\d)(\\..*)?");

    private FileName() {}

    /** The name without folders and without what is not fit. */
    static String cleaned(String typed) {
        String last = typed.substring(Math.max(typed.lastIndexOf('/'), typed.lastIndexOf('\\')) + 1);
        String name =
                UNFIT.matcher(Normalizer.normalize(last, Normalizer.Form.NFC)).replaceAll("");
        name = BLANKS.matcher(name).replaceAll(" ").strip();
        while (name.startsWith(".") || name.startsWith("-") || name.startsWith(" ")) name = name.substring(1);
        while (name.endsWith(".") || name.endsWith(" ")) name = name.substring(0, name.length() - 1);
        return RESERVED.matcher(name).matches() ? "_" + name : name;
    }

    /** What stands behind the last dot of a cleaned name; empty where there is no dot. */
    static String extension(String name) {
        return name.substring(stem(name).length()).replace(".", "");
    }

    /** A cleaned name with an ending, cut to a length every disk takes. */
    static String withExtension(String name, MediaType type) {
        String extension = extension(name);
        String stem = stem(name);
        if (stem.isEmpty()) stem = "attachment";
        int length = Math.min(stem.length(), LONGEST);
        if (length < stem.length() && Character.isHighSurrogate(stem.charAt(length - 1))) length--;
        return stem.substring(0, length).strip() + "." + (extension.isEmpty() ? type.extension() : extension);
    }

    private static String stem(String name) {
        int dot = name.lastIndexOf('.');
        return dot < 0 ? name : name.substring(0, dot);
    }
}
