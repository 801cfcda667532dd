package tideover.engine.wiring.mistake;

import java.util.ArrayList;
import java.util.List;
import tideover.engine.site.ThingId;
import tideover.engine.wiring.model.Defect;
import tideover.engine.wiring.model.HouseModel;

/** Lists every single mistake and failure of a house. */
public final class Mistakes {

    private final List<Mistake> all = new ArrayList<>();

    private Mistakes() {}

    /** All of them: power wiring, control wiring and settings, failures. */
    public static List<Mistake> of(HouseModel model) {
        Mistakes mistakes = new Mistakes();
        if (model.findLeader().isEmpty()) return List.of();
        new PowerMistakes(model, mistakes).list();
        new ControlMistakes(model, mistakes).list();
        new Failures(model, mistakes).list();
        return List.copyOf(mistakes.all);
    }

    /** The failures alone. */
    public static List<Mistake> failures(HouseModel model) {
        Mistakes mistakes = new Mistakes();
        if (model.findLeader().isPresent()) new Failures(model, mistakes).list();
        return List.copyOf(mistakes.all);
    }

    void add(MistakeKind kind, ThingId place, List<String> details, ThingId other, Defect defect) {
        all.add(new Mistake(all.size(), kind, place, details, other, defect));
    }

    void add(MistakeKind kind, ThingId place, List<String> details, Defect defect) {
        add(kind, place, details, place, defect);
    }
}
