package tideover.papers.terminals;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import tideover.engine.installation.Installation;
import tideover.engine.installation.control.ControlNet;
import tideover.engine.site.ThingId;
import tideover.engine.wiring.schedule.ControlSchedule;
import tideover.engine.wiring.schedule.PowerSchedule;
import tideover.papers.Stamp;
import tideover.papers.Wording;
import tideover.papers.drawing.Pen;

/**
 * The terminal drawing of a cabinet: connections between its devices, current paths of its control wiring, and a card for
 * each device. The same input gives the same bytes.
 */
public final class TerminalDrawing {

    private final List<TerminalSheet> sheets = new ArrayList<>();
    private final List<Device> devices;
    private final Wording wording;
    private final Strip strip;

    private record Page(Paper paper, String name, String title, Consumer<Pen> painter) {}

    private TerminalDrawing(List<Device> devices, Wording wording, Strip strip) {
        this.devices = devices;
        this.wording = wording;
        this.strip = strip;
    }

    /**
     * Draws all sheets: the whole cabinet first, then the cards.
     *
     * @param power   rows of the power wiring
     * @param control rows of the control wiring
     */
    public static TerminalDrawing of(
            Installation installation,
            ControlNet net,
            PowerSchedule power,
            ControlSchedule control,
            Wording wording,
            Stamp stamp) {
        Wording names = wording.with(installation);
        List<Device> devices = new Devices(installation, net, power, control, names).all();
        TerminalDrawing drawing = new TerminalDrawing(devices, names, new Strip(names, stamp));
        List<Page> pages = new ArrayList<>();
        Connections connections = new Connections(installation, devices, power, control, names);
        if (!connections.isEmpty())
            pages.add(new Page(
                    connections.paper(), "connections", names.text("terminals.connections"), connections::paint));
        LeadWords words = new LeadWords(installation, names);
        Map<ThingId, String> tags = devices.stream().collect(Collectors.toMap(Device::id, Device::tag));
        Paths paths = new Paths(net, control, new ControlCards(net, control, words, names), words, tags);
        paths.sheets()
                .forEach((web, paper) -> pages.add(new Page(
                        paper, "paths-" + pages.size(), names.text("terminals.paths"), pen -> paths.paint(pen, web))));
        drawing.cards(devices, pages);
        drawing.bind(pages);
        return drawing;
    }

    /** The cards of one device only; no sheets where it has no card. */
    public TerminalDrawing only(ThingId device) {
        List<Device> one =
                devices.stream().filter(each -> each.id().equals(device)).toList();
        TerminalDrawing drawing = new TerminalDrawing(one, wording, strip);
        List<Page> pages = new ArrayList<>();
        drawing.cards(one, pages);
        drawing.bind(pages);
        return drawing;
    }

    private void cards(List<Device> shown, List<Page> pages) {
        CardPages cards = new CardPages(shown, wording);
        for (List<CardPages.Piece> page : cards.pages()) {
            String tags =
                    page.stream().map(piece -> piece.device.tag()).distinct().collect(Collectors.joining(", "));
            pages.add(new Page(
                    Paper.A4,
                    "card-" + (cards.pages().indexOf(page) + 1),
                    wording.text("terminals.card", tags),
                    pen -> cards.paint(pen, page)));
        }
    }

    private void bind(List<Page> pages) {
        for (int i = 0; i < pages.size(); i++) {
            Page page = pages.get(i);
            int number = i + 1;
            sheets.add(new TerminalSheet(page.paper(), page.name(), page.title(), wording, pen -> {
                page.painter().accept(pen);
                strip.paint(pen, page.paper(), page.title(), number, pages.size());
            }));
        }
    }

    /** All sheets in their order. */
    public List<TerminalSheet> sheets() {
        return List.copyOf(sheets);
    }

    /** Devices that have a card. */
    public List<ThingId> devices() {
        return devices.stream().map(Device::id).toList();
    }
}
