package tideover.web.circuits;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tideover.engine.assessment.Assessment;
import tideover.engine.installation.Installation;
import tideover.engine.rules.Finding;
import tideover.engine.rules.Force;
import tideover.engine.rules.Outcome;
import tideover.engine.site.Board;
import tideover.engine.site.Circuit;
import tideover.engine.site.Fed;
import tideover.engine.site.Origin;
import tideover.engine.site.RcdGroup;
import tideover.engine.site.Status;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;
import tideover.files.SiteEdits;
import tideover.files.yaml.Node;
import tideover.files.yaml.NodeText;
import tideover.papers.Wording;
import tideover.web.circuits.Sheet.Cell;
import tideover.web.circuits.Sheet.Group;
import tideover.web.circuits.Sheet.Part;
import tideover.web.circuits.Sheet.Removed;
import tideover.web.circuits.Sheet.Row;
import tideover.web.edit.CellText;
import tideover.web.work.Work;

/** Lays the circuits of a site out on the sheet. */
final class SheetBuilder {
    private static final String PLAN = "plan";

    private final Work work;
    private final Installation installation;
    private final Wording words;
    private final SiteEdits.Facts facts;
    private final CellText text;
    private final String side;
    private final Map<ThingId, Finding> worst = new HashMap<>();

    SheetBuilder(Work work, Assessment findings, Wording words, SiteEdits edits, CellText text, String side) {
        this.work = work;
        this.installation = work.installation();
        this.words = words;
        this.facts = edits.facts(work.site());
        this.text = text;
        this.side = side;
        for (Finding finding : findings.findings())
            if (!finding.outcome().isSettled() && finding.accepted() == null)
                worst.merge(finding.key().place(), finding, SheetBuilder::worse);
    }

    private static Finding worse(Finding a, Finding b) {
        return severity(b) > severity(a) ? b : a;
    }

    private static int severity(Finding finding) {
        int binding = finding.force() == Force.ADVISED ? 0 : 4;
        return binding
                + switch (finding.outcome()) {
                    case NOT_MET -> 3;
                    case NOT_CERTAIN -> 2;
                    case OPEN -> 1;
                    case MET, NOT_APPLICABLE -> 0;
                };
    }

    /** What stays on, what lies below the line, what nobody can say yet. */
    List<Part> parts() {
        Map<Lie, Map<ThingId, List<Circuit>>> all = new LinkedHashMap<>();
        for (Lie lie : Lie.values()) all.put(lie, new LinkedHashMap<>());
        // An empty group is a place to move a circuit to.
        for (Thing thing : installation.things())
            if (thing instanceof RcdGroup || thing instanceof Board) group(all, lie((Fed) thing), thing.id());
        for (Circuit circuit : installation.circuits())
            group(all, lie(circuit), circuit.fedFrom() == null ? ThingId.SUPPLY : circuit.fedFrom())
                    .add(circuit);
        List<Part> parts = new ArrayList<>();
        all.forEach((lie, groups) -> {
            List<Group> shown = new ArrayList<>();
            groups.forEach((feeder, circuits) -> {
                if (!circuits.isEmpty() || installation.status(feeder) != Status.REMOVED)
                    shown.add(new Group(feeder.text(), title(feeder), newId(), rows(circuits, lie)));
            });
            if (lie != Lie.UNKNOWN
                    || shown.stream().anyMatch(group -> !group.rows().isEmpty()))
                parts.add(new Part(lie.look(), lie.titleKey().isEmpty() ? "" : words.text(lie.titleKey()), shown));
        });
        return parts;
    }

    /** On which side of the double line something lies. */
    private enum Lie {
        STAYS_ON("island", "", "circuits.staysOn"),
        GRID_ONLY("grid", "circuits.cut", "circuits.gridOnly"),
        UNKNOWN("unknown", "circuits.unknown", "circuits.unknownSide");

        private final String look;
        private final String titleKey;
        private final String sideKey;

        Lie(String look, String titleKey, String sideKey) {
            this.look = look;
            this.titleKey = titleKey;
            this.sideKey = sideKey;
        }

        String look() {
            return look;
        }

        String titleKey() {
            return titleKey;
        }

        String sideKey() {
            return sideKey;
        }
    }

    private Lie lie(Fed thing) {
        if (installation.staysOn(thing)) return Lie.STAYS_ON;
        return installation.gaps(thing).isEmpty() ? Lie.GRID_ONLY : Lie.UNKNOWN;
    }

    private static List<Circuit> group(Map<Lie, Map<ThingId, List<Circuit>>> all, Lie lie, ThingId feeder) {
        return all.getOrDefault(lie, new LinkedHashMap<>()).computeIfAbsent(feeder, id -> new ArrayList<>());
    }

    private String title(ThingId feeder) {
        Fed thing = installation.findFed(feeder).orElse(null);
        if (thing == null) return words.name(feeder);
        List<String> parts = new ArrayList<>();
        parts.add(words.name(feeder));
        Optional<String> rcd = facts.find(feeder + ".rcd");
        rcd.ifPresent(json -> parts.add(words.text("circuits.behind", text.of("boards.rcd", json))));
        if (thing instanceof RcdGroup && thing.fedFrom() != null) parts.add(words.name(thing.fedFrom()));
        return String.join(" · ", parts);
    }

    private List<Row> rows(List<Circuit> circuits, Lie lie) {
        return circuits.stream().map(circuit -> row(circuit, lie)).toList();
    }

    private Row row(Circuit circuit, Lie lie) {
        ThingId id = circuit.id();
        Status status = installation.status(id);
        Finding finding = worst.get(id);
        List<Cell> cells = new ArrayList<>();
        for (Column column : Column.values()) cells.add(cell(circuit, status, column));
        boolean isNew = status == Status.NEW;
        String whole = PLAN + ".circuits." + id;
        Cell taking =
                isNew ? plain(whole, facts.find(whole).orElse(""), "") : plain(PLAN + ".removed." + id, "", "true");
        return new Row(
                id.text(),
                words.name(id),
                lie.look(),
                words.text(lie.sideKey()),
                status == Status.EXISTING ? "" : words.word(status),
                finding == null ? "" : words.sign(finding.outcome()),
                finding == null ? "" : look(finding.outcome()),
                plain(
                        PLAN + "." + id + ".fedFrom",
                        circuit.fedFrom() == null ? "" : circuit.fedFrom().text(),
                        ""),
                taking,
                cells);
    }

    private Cell cell(Circuit circuit, Status status, Column column) {
        String fact = circuit.id() + "." + column.field();
        Node node = facts.findNode(fact).orElse(null);
        String now = node == null ? "" : NodeText.of(node);
        String path = sideOf(status, column, now) + "." + fact;
        String label = words.text("circuits.cell", words.text(column.key()), words.name(circuit.id()));
        // Most circuits have no RCD of their own; that is no gap.
        String look = column == Column.RCD_TYPE && now.isEmpty() ? "none" : "";
        if (status == Status.ALTERED && !now.equals(facts.find("house." + fact).orElse(""))) look = "planned";
        else if (!now.isEmpty() && !column.field().equals("designation") && isAssumed(circuit, column))
            look = "assumed";
        return new Cell(
                path,
                now,
                node == null ? "" : text.of(column.path(), node),
                column.align().name().toLowerCase(Locale.ROOT),
                label,
                column.hasList() ? listId(column) : "",
                look);
    }

    private boolean isAssumed(Circuit circuit, Column column) {
        return installation.origins().of(circuit.fact(column.field())) == Origin.ASSUMED;
    }

    /**
     * Where a change of a cell is written: of what only the plan knows, into the plan; a fact nobody has stated yet of a
     * thing that is there was found, whoever types it and when, unless it is a matter of planning.
     */
    private String sideOf(Status status, Column column, String now) {
        if (status == Status.NEW) return PLAN;
        if (side.equals(PLAN) && now.isEmpty() && !isPlanning(column)) return "house";
        if (column == Column.DESIGNATION) return "house";
        return side;
    }

    private static boolean isPlanning(Column column) {
        return column == Column.PROTECTION || column == Column.RCD_TYPE;
    }

    static String listId(Column column) {
        return "words-" + column.name().toLowerCase(Locale.ROOT);
    }

    private static Cell plain(String path, String was, String after) {
        return new Cell(path, was, after, "start", "", "", "");
    }

    private static String look(Outcome outcome) {
        return outcome.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Circuits that the plan takes out. */
    List<Removed> removed() {
        List<Removed> removed = new ArrayList<>();
        for (ThingId id : work.site().plan().removed())
            for (Thing thing : work.site().house().things())
                if (thing.id().equals(id) && thing instanceof Circuit)
                    removed.add(new Removed(name(thing), plain(PLAN + ".removed." + id, "true", "")));
        return removed;
    }

    private static String name(Thing thing) {
        @Nullable String designation = thing.designation();
        return designation == null ? thing.id().text() : designation;
    }

    /** An id that no thing bears. */
    private String newId() {
        return newId(work, 1);
    }

    /** @param nth of several new ones, from 1 */
    static String newId(Work work, int nth) {
        int number = 0;
        int left = nth;
        while (left > 0) {
            number++;
            if (!work.site().statuses().containsKey(new ThingId("circuit-" + number))) left--;
        }
        return "circuit-" + number;
    }

    /** Ids of the rows, in the order of the sheet. */
    static List<ThingId> order(List<Part> parts) {
        List<ThingId> order = new ArrayList<>();
        for (Part part : parts)
            for (Group group : part.groups()) {
                for (Row row : group.rows()) order.add(new ThingId(row.id()));
                order.add(new ThingId(group.feeder()));
            }
        return order;
    }
}
