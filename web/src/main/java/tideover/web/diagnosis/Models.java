package tideover.web.diagnosis;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import org.springframework.stereotype.Component;
import tideover.engine.installation.Installation;
import tideover.engine.rules.Digest;
import tideover.papers.Wording;
import tideover.papers.wiring.WiringModel;
import tideover.web.work.Work;

/** Wiring models with what every reading shows with every mistake; the last ones asked are kept, as whoever asks goes on asking. */
@Component
final class Models {
    /** A large house takes some twenty megabytes. */
    private static final int KEPT = 3;

    private final Map<Key, WiringModel> kept = new LinkedHashMap<>(8, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Key, WiringModel> eldest) {
            return size() > KEPT;
        }
    };

    private record Key(Digest site, Locale locale) {}

    /**
     * Asks the model of a site; one asks at a time.
     *
     * @param words knows the printed names of the site's things
     */
    <T> T ask(Work work, Wording words, Function<WiringModel, T> question) {
        Key key = new Key(work.revision().digest(), words.locale());
        WiringModel model;
        synchronized (kept) {
            // Resolved anew: what is kept must not hold on to the work, nor be asked by two threads.
            model = kept.computeIfAbsent(key, made -> new WiringModel(Installation.of(work.site()), words));
        }
        synchronized (model) {
            return question.apply(model);
        }
    }
}
