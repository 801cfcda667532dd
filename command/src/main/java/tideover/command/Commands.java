package tideover.command;

import java.util.Map;
import java.util.function.Function;
import picocli.CommandLine;
import picocli.CommandLine.IFactory;

/** Makes commands, each with the desk it works at. */
final class Commands implements IFactory {

    private static final Map<Class<?>, Function<Desk, Object>> MAKERS = Map.of(
            CheckCommand.class, CheckCommand::new,
            DrawCommand.class, DrawCommand::new,
            HandoverCommand.class, HandoverCommand::new,
            LetterCommand.class, LetterCommand::new,
            NetworkCommand.class, NetworkCommand::new,
            WiringCommand.class, WiringCommand::new,
            DiagnoseCommand.class, DiagnoseCommand::new,
            DemoCommand.class, DemoCommand::new,
            RulesCommand.class, RulesCommand::new,
            SchemaCommand.class, SchemaCommand::new);

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
