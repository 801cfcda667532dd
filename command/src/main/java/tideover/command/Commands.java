package tideover.command;

import java.util.Map;
import java.util.function.Function;
import picocli.CommandLine;
import picocli.CommandLine.IFactory;

/** Makes commands, each with the desk it works at. */
final class Commands implements IFactory {

    private static final Map<Class<?>, Function<Desk, Object>> MAKERS = Map.ofEntries(
            Map.entry(CheckCommand.class, CheckCommand::new),
            Map.entry(DrawCommand.class, DrawCommand::new),
            Map.entry(HandoverCommand.class, HandoverCommand::new),
            Map.entry(LetterCommand.class, LetterCommand::new),
            Map.entry(NetworkCommand.class, NetworkCommand::new),
            Map.entry(WiringCommand.class, WiringCommand::new),
            Map.entry(CircuitsCommand.class, CircuitsCommand::new),
            Map.entry(DiagnoseCommand.class, DiagnoseCommand::new),
            Map.entry(DemoCommand.class, DemoCommand::new),
            Map.entry(RulesCommand.class, RulesCommand::new),
            Map.entry(SchemaCommand.class, SchemaCommand::new),
            Map.entry(ServeCommand.class, ServeCommand::new));

    private final Desk desk;

    Commands(Desk desk) {
        this.desk = desk;
    }

    @Override
    public <K> K create(Class<K> type) throws Exception {
        Function<Desk, Object> maker = MAKERS.get(type);
        return maker == null ? CommandLine.defaultFactory().create(type) : type.cast(maker.apply(desk));
    }
}
