package tideover.web.diagnosis;

import jakarta.servlet.http.HttpServletRequest;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tideover.engine.wiring.model.Shown;
import tideover.engine.wiring.procedure.Situation;
import tideover.papers.diagnosis.CallSheet.Answer;
import tideover.papers.diagnosis.DiagnosisLists.Length;
import tideover.web.page.NotHere;

/**
 * What an address of the page says.
 *
 * @param call    what the caller has, by the name of its tree; empty where nothing was chosen
 * @param answers to the questions of that tree, in their order
 * @param seen    readings with what they showed, in the order in which they were given
 * @param word    what the readings to choose from are filtered by; empty where nothing was asked for
 * @param situation of the readings to choose from; nothing for any
 * @param length  whether all mistakes that fit are told
 */
record Asked(
        String call,
        List<Answer> answers,
        List<Seen> seen,
        String word,
        @Nullable Situation situation,
        Length length) {
    Asked {
        answers = List.copyOf(answers);
        seen = List.copyOf(seen);
    }

    /**
     * One reading and what it showed.
     *
     * @param reading its id
     * @param shown   as addresses write it, such as {@code line-voltage}
     */
    record Seen(String reading, String shown) {
        static Seen of(String text) {
            int equals = text.lastIndexOf('=');
            return equals < 0 ? new Seen(text, "") : new Seen(text.substring(0, equals), text.substring(equals + 1));
        }

        @Override
        public String toString() {
            return reading + "=" + shown;
        }
    }

    static Asked of(HttpServletRequest request) {
        return new Asked(
                text(request, "call"),
                all(request, "answer").stream().map(Asked::answer).toList(),
                all(request, "seen").stream().map(Seen::of).toList(),
                text(request, "word").strip(),
                find(Situation.class, text(request, "situation")).orElse(null),
                text(request, "full").isEmpty() ? Length.SHORT : Length.FULL);
    }

    private static String text(HttpServletRequest request, String name) {
        String text = request.getParameter(name);
        return text == null ? "" : text;
    }

    private static List<String> all(HttpServletRequest request, String name) {
        String @Nullable [] texts = request.getParameterValues(name);
        return texts == null ? List.of() : List.of(texts);
    }

    private static Answer answer(String word) {
        return find(Answer.class, word).orElseThrow(() -> new NotHere("answer " + word));
    }

    /** A constant as addresses write it. */
    static String path(Enum<?> word) {
        return word.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static <E extends Enum<E>> Optional<E> find(Class<E> words, String path) {
        return Arrays.stream(words.getEnumConstants())
                .filter(word -> path(word).equals(path))
                .findFirst();
    }

    Asked withCall(String other) {
        return new Asked(other, List.of(), seen, word, situation, length);
    }

    /** The first answers only. */
    Asked withAnswers(int count) {
        return new Asked(call, answers.subList(0, count), seen, word, situation, length);
    }

    /** One answer more. */
    Asked with(Answer answer) {
        List<Answer> more = new ArrayList<>(answers);
        more.add(answer);
        return new Asked(call, more, seen, word, situation, length);
    }

    /** A reading with what it showed, instead of what was given for it before. */
    Asked with(String reading, Shown shown) {
        List<Seen> more = new ArrayList<>(without(reading).seen());
        more.add(new Seen(reading, path(shown)));
        return new Asked(call, answers, more, word, situation, Length.SHORT);
    }

    Asked without(String reading) {
        List<Seen> left =
                seen.stream().filter(each -> !each.reading().equals(reading)).toList();
        return new Asked(call, answers, left, word, situation, Length.SHORT);
    }

    Asked with(Length other) {
        return new Asked(call, answers, seen, word, situation, other);
    }

    /** What stands in the address beside the filter, name and value by turns. */
    List<DiagnosisSheet.Kept> kept() {
        List<DiagnosisSheet.Kept> kept = new ArrayList<>();
        if (!call.isEmpty()) kept.add(new DiagnosisSheet.Kept("call", call));
        for (Answer answer : answers) kept.add(new DiagnosisSheet.Kept("answer", path(answer)));
        for (Seen each : seen) kept.add(new DiagnosisSheet.Kept("seen", each.toString()));
        if (length == Length.FULL) kept.add(new DiagnosisSheet.Kept("full", "yes"));
        return kept;
    }

    /** What stands behind the address of the page. */
    String query() {
        StringBuilder query = new StringBuilder();
        for (DiagnosisSheet.Kept each : kept()) add(query, each.name(), each.value());
        if (!word.isEmpty()) add(query, "word", word);
        if (situation != null) add(query, "situation", path(situation));
        return query.toString();
    }

    private static void add(StringBuilder query, String name, String value) {
        query.append(query.isEmpty() ? '?' : '&')
                .append(name)
                .append('=')
                .append(URLEncoder.encode(value, StandardCharsets.UTF_8));
    }
}
