package tideover.reference;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import tideover.engine.site.Built;
import tideover.engine.site.BusMedium;
import tideover.engine.site.BusPort;
import tideover.engine.site.BusRole;
import tideover.engine.site.Circuit;
import tideover.engine.site.ControlCable;
import tideover.engine.site.ControlPort;
import tideover.engine.site.Core;
import tideover.engine.site.IslandSettings;
import tideover.engine.site.MainContacts;
import tideover.engine.site.Nameplate;
import tideover.engine.site.Notice;
import tideover.engine.site.Parity;
import tideover.engine.site.Plan;
import tideover.engine.site.PortKind;
import tideover.engine.site.PowerTerminals;
import tideover.engine.site.Screen;
import tideover.engine.site.SignalForm;
import tideover.engine.site.SignalMeaning;
import tideover.engine.site.Site;
import tideover.engine.site.TerminalId;
import tideover.engine.site.Terminals;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;
import tideover.engine.site.ThingKind;

/**
 * Random control wiring for a generated house that has an islanding switch: outputs and inputs of any form, a bus line, mostly
 * joined as they should be, now and then with a core astray; and what was built otherwise.
 */
final class GeneratedControl {
    private static final ThingId INVERTER = new ThingId("inverter-1");
    private static final ThingId SWITCH = new ThingId("islanding-switch");
    private static final ThingId LINK = new ThingId("earth-switch");
    private static final ThingId BY_PASS = new ThingId("by-pass");

    private final SplittableRandom random;
    private final Map<ThingId, Thing> there;
    private final List<Thing> things = new ArrayList<>();
    private final List<TerminalId> terminals = new ArrayList<>();
    private final List<Core> cores = new ArrayList<>();
    private int number;

    private GeneratedControl(Site site, SplittableRandom random) {
        this.random = random;
        this.there = site.planned();
    }

    /** The site with control wiring; the same site where there is no switch or nobody has got that far. */
    static Site wired(Site site, SplittableRandom random) {
        GeneratedControl control = new GeneratedControl(site, random);
        if (!control.there.containsKey(SWITCH) || !control.there.containsKey(INVERTER) || random.nextInt(5) == 0)
            return site;
        control.wire();
        List<Thing> planned = new ArrayList<>(site.plan().things());
        planned.addAll(control.things);
        planned.sort(Comparator.comparing(ThingKind::of));
        Plan plan = new Plan(planned, site.plan().removed(), site.plan().accepted());
        return control.forgetful(new Site(site.house(), plan, control.built(), site.evidence()));
    }

    private void wire() {
        SignalForm requests = pick(SignalForm.values());
        SignalForm reports = pick(SignalForm.values());
        List<ThingId> circuits = there.values().stream()
                .filter(Circuit.class::isInstance)
                .map(Thing::id)
                .toList();
        ThingId source = circuits.isEmpty() || random.nextInt(4) > 0 ? INVERTER : circuits.get(0);
        ControlPort supply = port("control-supply", source, PortKind.SUPPLY, null, null, null, "+", "-");
        TerminalId plus = supply.terminal("+");
        TerminalId minus = supply.terminal("-");
        boolean hasLink = there.containsKey(LINK);

        ControlPort switchLock = contact("switch-lock", SWITCH, MainContacts.OPEN);
        ControlPort linkLock = hasLink ? contact("link-lock", LINK, MainContacts.OPEN) : null;
        request("switch", SWITCH, SignalMeaning.SWITCH_CLOSED, requests, linkLock, plus, minus);
        report("switch-report", SWITCH, MainContacts.OPEN, SignalMeaning.SWITCH_OPEN, reports, plus, minus);
        if (hasLink) {
            request("link", LINK, SignalMeaning.LINK_CLOSED, requests, switchLock, plus, minus);
            report("link-report", LINK, MainContacts.CLOSED, SignalMeaning.LINK_CLOSED, reports, plus, minus);
        }
        if (there.containsKey(BY_PASS))
            report("may-run", BY_PASS, MainContacts.OPEN, SignalMeaning.MAY_RUN, reports, plus, minus);
        bus();
        astray();
        int half = cores.size() / 2;
        things.add(cable("cable", cores.subList(0, half)));
        List<Core> rest = new ArrayList<>(cores.subList(half, cores.size()));
        rest.add(new Core("spare", null, null));
        things.add(cable("wires", rest));
        things.add(new IslandSettings(
                id("settings"), "Settings", INVERTER, 0.1, pick(0.5, 2.0), 3.0, pick(20.0, 60.0), id("meter")));
        things.add(new PowerTerminals(
                id("switch-terminals"),
                "Terminals of the switch",
                SWITCH,
                pick(Terminals.values()),
                List.of("1", "3", "5", "7"),
                pick("7'", null),
                2.5,
                0.012,
                16.0));
    }

    private void request(
            String name,
            ThingId device,
            SignalMeaning meaning,
            SignalForm form,
            @Nullable ControlPort lock,
            TerminalId plus,
            TerminalId minus) {
        ControlPort coil = port(name + "-coil", device, PortKind.COIL, null, meaning, null, "A1", "A2");
        ControlPort output = form == SignalForm.CONTACT
                ? port(name + "-request", INVERTER, PortKind.OUTPUT, form, meaning, null, "1", "2")
                : port(name + "-request", INVERTER, PortKind.OUTPUT, form, meaning, null, "1");
        boolean isMinus = form == SignalForm.MINUS;
        if (form == SignalForm.CONTACT) join(plus, output.terminal("1"));
        TerminalId end = output.terminal(form == SignalForm.CONTACT ? "2" : "1");
        if (lock != null) {
            join(end, lock.terminal("1"));
            end = lock.terminal("2");
        }
        join(end, coil.terminal(isMinus ? "A2" : "A1"));
        join(coil.terminal(isMinus ? "A1" : "A2"), isMinus ? plus : minus);
    }

    private void report(
            String name,
            ThingId device,
            MainContacts closedWhen,
            SignalMeaning meaning,
            SignalForm form,
            TerminalId plus,
            TerminalId minus) {
        ControlPort contact = contact(name + "-contact", device, closedWhen);
        ControlPort input = form == SignalForm.CONTACT
                ? port(name, INVERTER, PortKind.INPUT, form, meaning, null, "1", "2")
                : port(name, INVERTER, PortKind.INPUT, form, meaning, null, "1");
        join(contact.terminal("1"), input.terminal("1"));
        if (form == SignalForm.CONTACT) join(contact.terminal("2"), input.terminal("2"));
        else join(contact.terminal("2"), form == SignalForm.PLUS ? plus : minus);
    }

    private ControlPort contact(String name, ThingId device, MainContacts closedWhen) {
        return port(name, device, PortKind.AUXILIARY_CONTACT, null, null, closedWhen, "1", "2");
    }

    private ControlPort port(
            String name,
            ThingId device,
            PortKind kind,
            @Nullable SignalForm form,
            @Nullable SignalMeaning meaning,
            @Nullable MainContacts closedWhen,
            String... names) {
        boolean isNumbered = kind == PortKind.INPUT || kind == PortKind.OUTPUT;
        boolean isContact = kind == PortKind.AUXILIARY_CONTACT || form == SignalForm.CONTACT && kind == PortKind.OUTPUT;
        boolean isTaking = kind == PortKind.COIL || kind == PortKind.INPUT;
        ControlPort port = new ControlPort(
                id(name),
                "Port, \"" + name + "\"",
                device,
                kind,
                List.of(names),
                isNumbered ? ++number : null,
                form,
                meaning,
                closedWhen,
                isTaking || kind == PortKind.SUPPLY ? 24.0 : null,
                isTaking ? pick(15.0, 20.4) : null,
                kind == PortKind.SUPPLY ? pick(0.3, 1.0) : kind == PortKind.INPUT ? 0.008 : pick(0.1, 1.0),
                isContact ? pick(0.005, 0.02) : null,
                kind == PortKind.COIL ? 0.03 : null,
                kind == PortKind.COIL ? 0.02 : null);
        add(port, port.terminals());
        return port;
    }

    private void add(Thing port, List<String> names) {
        things.add(port);
        for (String name : names) terminals.add(new TerminalId(port.id(), name));
    }

    private void bus() {
        List<ThingId> devices = new ArrayList<>(List.of(INVERTER, new ThingId("meter")));
        if (random.nextInt(3) == 0) devices.add(new ThingId("battery"));
        BusMedium medium = random.nextInt(5) == 0 ? BusMedium.TCP : BusMedium.RS485;
        List<String> names = List.of("D1", "D0", "C");
        List<String> onwards = List.of("D1'", "D0'", "C'");
        for (int i = 0; i < devices.size(); i++) {
            boolean isClient = i == 0;
            boolean isEnd = i == 0 || i == devices.size() - 1;
            BusPort port = new BusPort(
                    id("bus-" + devices.get(i)),
                    "Bus",
                    devices.get(i),
                    medium,
                    isClient ? BusRole.CLIENT : BusRole.SERVER,
                    names,
                    isEnd ? null : onwards,
                    isClient ? null : pick(i, i, i, 1),
                    medium == BusMedium.TCP && !isClient ? "192.0.2." + i : null,
                    pick(9600, 9600, 9600, 19200),
                    pick(Parity.EVEN, Parity.EVEN, Parity.NONE),
                    1,
                    0.25,
                    isEnd == random.nextInt(8) > 0 ? 120.0 : null,
                    isClient ? 560.0 : null,
                    isClient ? 5.0 : null,
                    isClient ? null : random.nextInt(1, 126),
                    isClient ? null : random.nextInt(1, 8),
                    isClient ? null : 0.05,
                    isClient ? pick(0.2, 1.0) : null,
                    isClient ? 0.3 : null);
            things.add(port);
            if (isClient) continue;
            for (int k = 0; k < names.size(); k++) {
                String from = i == 1 ? names.get(k) : onwards.get(k);
                join(new TerminalId(id("bus-" + devices.get(i - 1)), from), port.terminal(names.get(k)));
            }
        }
    }

    private void join(TerminalId from, TerminalId to) {
        cores.add(new Core(Integer.toString(cores.size() + 1), from, to));
    }

    /** In some houses a core ends elsewhere than it should, or was forgotten. */
    private void astray() {
        for (int i = random.nextInt(3); i > 1; i--) {
            int at = random.nextInt(cores.size());
            Core core = cores.get(at);
            cores.set(
                    at,
                    new Core(core.mark(), core.from(), pick(terminals.get(random.nextInt(terminals.size())), null)));
        }
    }

    private ControlCable cable(String name, List<Core> inside) {
        return new ControlCable(
                id(name),
                "Cable",
                pick(0.5, 6.0, 40.0),
                pick(0.25, 0.75),
                random.nextBoolean(),
                pick(Screen.values()),
                inside);
    }

    private Built built() {
        if (random.nextInt(3) > 0) return Built.AS_PLANNED;
        List<Thing> otherwise = new ArrayList<>();
        otherwise.add(new ControlCable(id("cable"), null, 12.0, null, null, null, null));
        otherwise.add(new Nameplate(id("plate"), "Plate", INVERTER, "Article", "0042", pick("1.10", null)));
        List<ThingId> notices = there.values().stream()
                .filter(Notice.class::isInstance)
                .map(Thing::id)
                .toList();
        List<ThingId> swapped = random.nextBoolean() ? List.of(INVERTER) : List.of();
        return new Built(otherwise, swapped, notices.isEmpty() ? List.of() : notices.subList(0, 1));
    }

    private Site forgetful(Site whole) {
        Site site = whole;
        int oneIn = pick(1000, 40, 8);
        for (Thing thing : things)
            for (RecordComponent fact : thing.getClass().getRecordComponents())
                // Cores end at the terminals for the cable onwards, so they stay known.
                if (!Set.of("id", "passThrough").contains(fact.getName()) && random.nextInt(oneIn) == 0)
                    site = site.with(thing.fact(fact.getName()), null);
        return site;
    }

    private static ThingId id(String text) {
        return new ThingId(text);
    }

    @SafeVarargs
    private <T> @Nullable T pick(@Nullable T... from) {
        return from[random.nextInt(from.length)];
    }
}
