#include "core/cli/crew_options.h"

#include <CLI/CLI.hpp>

namespace lidlark::cli {

namespace {

void addPlace(CLI::App *command, PlaceOptions &place)
{
    command->add_option("--to", place.to, "Where the crew shares: a folder, or a WebDAV URL");
    command->add_option("--user", place.user, "Name at the server");
    command->add_option("--password-file", place.passwordFile,
                        "File whose first line is the password, or the token");
    command->add_flag("--token", place.token, "It is a token");
    command->add_option("--ca-file", place.caFile, "Who may sign the server's certificate (PEM)");
}

void addJoin(CLI::App &app, const Options &options, JoinOptions &join, std::function<int()> &run)
{
    CLI::App *command = app.add_subcommand("join", "Let a phone into the crew, or come in");
    command->add_flag("--make-code", join.makeCode, "Nine words, for ten minutes and once");
    command->add_option("--role", join.role, "parent, caregiver, guest or therapist");
    command->add_option("--home", join.home, "Home of whoever is asked in (default: this phone's)");
    command->add_option("--until", join.until, "A guest's last day (default: the seventh)");
    command->add_option("--code", join.code, "The nine words; again, to see whether one is in");
    command->add_option("--person", join.person, "Who writes on the new phone");
    command->add_flag("--anew", join.anew,
                      "With --code: this store is a copy of another phone's, or was taken out");
    command->add_flag("--accept", join.accept, "Let in whoever used the code");
    command->add_flag("--make-sheet", join.makeSheet,
                      "A recovery sheet: twice nine words, to be kept on paper");
    command->add_option("--sheet", join.sheet,
                        "The words of a recovery sheet, the two rows parted by a slash");
    command->add_option("--remove", join.remove, "A device to remove");
    command->add_option("--child", join.child, "Alias of the child (default: the only one)");
    command->add_flag("--clinic", join.clinic, "Not a child's crew: the therapist's own table");
    addPlace(command, join.place);
    command->callback(
        [&options, &join, &run] { run = [&options, &join] { return runJoin(options, join); }; });
}

void addSync(CLI::App &app, const Options &options, SyncOptions &sync, std::function<int()> &run)
{
    CLI::App *command = app.add_subcommand("sync", "Exchange with the other phones of the crew");
    addPlace(command, sync.place);
    command->add_option("--hand-over", sync.handOver, "Write all of it, sealed, to a file");
    command->add_option("--take-in", sync.takeIn, "Read such a file");
    command->add_option("--child", sync.child, "Alias of the child (default: the only one)");
    command->add_flag("--clinic", sync.clinic, "With a file: the therapist's own table");
    command->callback(
        [&options, &sync, &run] { run = [&options, &sync] { return runSync(options, sync); }; });
}

void addErase(CLI::App &app, const Options &options, EraseOptions &erase, std::function<int()> &run)
{
    CLI::App *command =
        app.add_subcommand("erase", "Erase on every phone of the home; it cannot be brought back");
    command->add_option("--what", erase.what, "check-ins or plays")->required();
    command->add_option("--up-to", erase.upTo, "Last day, such as 2027-01-11 (default: today)");
    command->callback([&options, &erase, &run] {
        run = [&options, &erase] { return runErase(options, erase); };
    });
}

} // namespace

void addCrewCommands(CLI::App &app, const Options &options, CrewOptions &crew,
                     std::function<int()> &run)
{
    addJoin(app, options, crew.join, run);
    addSync(app, options, crew.sync, run);
    addErase(app, options, crew.erase, run);
}

} // namespace lidlark::cli
