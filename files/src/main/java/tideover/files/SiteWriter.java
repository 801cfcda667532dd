package tideover.files;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.rules.Digest;
import tideover.engine.site.Built;
import tideover.engine.site.House;
import tideover.engine.site.Plan;
import tideover.engine.site.Site;
import tideover.engine.site.TerminalId;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;
import tideover.engine.site.ThingKind;
import tideover.files.text.JsonSink;
import tideover.files.text.Numbers;
import tideover.files.text.Sink;
import tideover.files.text.Sink.Layout;
import tideover.files.text.YamlSink;
import tideover.files.yaml.Node.Mapping;
import tideover.files.yaml.NodeSink;
import tideover.files.yaml.Spot;

/**
 * Writes sites. A site whose things stand in the order of {@link ThingKind}, as every site read from a file does, reads
 * back as the same site. Safe to share between threads.
 */
public final class SiteWriter {
    private final FieldTable table;

    public SiteWriter(FieldTable table) {
        this.table = table;
    }

    /**
     * The one JSON text of a site: parts in the order of the records, missing facts left out, numbers as short as they
     * can be (RFC 8785), no blanks, no line ends.
     */
    public String canonicalJson(Site site) {
        JsonSink json = new JsonSink(Layout.LINE);
        write(site, json);
        return json.finish();
    }

    /** SHA-256 of the canonical JSON in UTF-8: the same for the same site, whatever file it was read from. */
    public Digest digest(Site site) {
        return Digest.of(canonicalJson(site));
    }

    /** The site as a person would write it. */
    public String yaml(Site site) {
        YamlSink yaml = new YamlSink();
        write(site, yaml);
        return yaml.finish();
    }

    /** The tree that the canonical JSON reads as; everything in it stands nowhere. */
    public Mapping tree(Site site) {
        NodeSink nodes = new NodeSink(Spot.whole(""));
        write(site, nodes);
        return nodes.finish();
    }

    private void write(Site site, Sink out) {
        out.beginMapping(Layout.BLOCK);
        out.key(SiteKeys.FORMAT);
        out.number(Integer.toString(SiteKeys.FORMAT_VERSION));
        out.key(SiteKeys.HOUSE);
        write(site.house(), out);
        Plan plan = site.plan();
        if (!plan.things().isEmpty()
                || !plan.removed().isEmpty()
                || !plan.accepted().isEmpty()) {
            out.key(SiteKeys.PLAN);
            write(plan, out);
        }
        Built built = site.built();
        if (!built.isAsPlanned()) {
            out.key(SiteKeys.BUILT);
            write(built, out);
        }
        list("evidence", site.evidence(), Layout.LINE, out);
        out.endMapping();
    }

    private void write(House house, Sink out) {
        out.beginMapping(Layout.BLOCK);
        single("place", house.place(), out);
        single("gridOperator", house.gridOperator(), out);
        single("supply", house.supply(), out);
        things(house.things(), out);
        out.endMapping();
    }

    private void write(Plan plan, Sink out) {
        out.beginMapping(Layout.BLOCK);
        things(plan.things(), out);
        ids("removed", plan.removed(), out);
        list("accepted", plan.accepted(), Layout.LINE, out);
        out.endMapping();
    }

    private void write(Built built, Sink out) {
        out.beginMapping(Layout.BLOCK);
        things(built.things(), out);
        ids("swapped", built.swapped(), out);
        ids("removed", built.removed(), out);
        out.endMapping();
    }

    private static void ids(String key, List<ThingId> ids, Sink out) {
        if (ids.isEmpty()) return;
        out.key(key);
        out.beginList(Layout.LINE);
        for (ThingId id : ids) out.text(id.text());
        out.endList();
    }

    private void single(String section, Thing thing, Sink out) {
        out.key(section);
        record(table.form(section), thing, Layout.BLOCK, out);
    }

    private void things(List<Thing> things, Sink out) {
        for (ThingKind kind : ThingKind.values())
            list(kind.section(), things.stream().filter(kind.type()::isInstance).toList(), Layout.BLOCK, out);
    }

    private void list(String section, List<?> records, Layout layout, Sink out) {
        if (records.isEmpty()) return;
        out.key(section);
        out.beginList(Layout.BLOCK);
        for (Object record : records) record(table.form(section), record, layout, out);
        out.endList();
    }

    private void record(RecordForm form, Object record, Layout layout, Sink out) {
        out.beginMapping(layout);
        for (RecordForm.Part part : form.parts()) {
            Object value = part.of(record);
            if (value == null) continue;
            out.key(part.name());
            value(part.nested(), value, out);
        }
        out.endMapping();
    }

    private void value(@Nullable RecordForm nested, Object value, Sink out) {
        if (value instanceof List<?> list) {
            out.beginList(Layout.LINE);
            for (Object item : list) value(nested, item, out);
            out.endList();
        } else if (nested != null) {
            record(nested, value, Layout.LINE, out);
        } else if (value instanceof Double number) {
            out.number(Numbers.shortest(number));
        } else if (value instanceof Integer number) {
            out.number(number.toString());
        } else if (value instanceof Boolean yesNo) {
            out.yesNo(yesNo);
        } else if (value instanceof Enum<?> word) {
            out.text(word.name());
        } else if (value instanceof String
                || value instanceof ThingId
                || value instanceof TerminalId
                || value instanceof LocalDate) {
            out.text(value.toString());
        } else {
            throw new IllegalStateException(value.getClass() + " has no form in a file");
        }
    }
}
