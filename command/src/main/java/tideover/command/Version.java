package tideover.command;

import picocli.CommandLine.IVersionProvider;
import tideover.papers.json.ProgramVersion;

/** What {@code --version} prints. */
final class Version implements IVersionProvider {

    @Override
    public String[] getVersion() {
        return new String[] {"tideover " + ProgramVersion.text()};
    }
}
