using Ringwright.Cli.Commands;
using Ringwright.Cli.Commands.Kept;
using Ringwright.Cli.Output;
using Ringwright.Core;
using Ringwright.Store;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Ringwright.Cli;

/// <summary>Runs one command. Results go to the first writer, complaints to the second, one sentence each.</summary>
public static class CommandLine
{
    /// <summary>Runs the command in <paramref name="args"/> and returns its exit code.</summary>
    public static int Run(string[] args, TextWriter output, TextWriter complaints)
    {
        var console = PlainConsole.On(output);
        try
        {
            return App(console).Run(args);
        }
        catch (BadInputException e)
        {
            complaints.WriteLine(e.Message);
            return ExitCode.BadInput;
        }
        catch (CommandAppException e)
        {
            complaints.WriteLine($"{e.Message.TrimEnd('.')}; see 'ringwright --help'.");
            return ExitCode.BadInput;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            complaints.WriteLine(e.Message);
            return ExitCode.FileFault;
        }
        catch (StoreException e)
        {
            complaints.WriteLine(e.Message);
            return ExitCode.FileFault;
        }
        catch (OperationCanceledException)
        {
            // Ctrl+C: what was computed so far is dropped, files are only written at the end.
            complaints.WriteLine("Stopped; nothing was written.");
            return ExitCode.Cancelled;
        }
#pragma warning disable CA1031 // The last resort: a person gets a sentence, never a stack trace.
        catch (Exception e)
#pragma warning restore CA1031
        {
            complaints.WriteLine($"A fault of Ringwright's own ({e.GetType().Name}: {e.Message}); nothing of yours was changed. Please report it with the command you typed.");
            return ExitCode.OwnFault;
        }
    }

    private static CommandApp App(IAnsiConsole console)
    {
        var app = new CommandApp();
        app.Configure(config =>
        {
            config.PropagateExceptions();
            // An option that is not known must not be passed over in silence.
            config.UseStrictParsing();
            config.ConfigureConsole(console);
            config.SetApplicationName("ringwright");
            config.SetApplicationVersion(AppVersion.Text);
            config.AddCommand<PlanCommand>("plan")
                .WithDescription("Plan a piece: job sheet (PDF), picture (SVG), plan (JSON), cut list (CSV), and a summary here.")
                .WithExample("plan", "examples/two-wood-disc.json", "--out", "out");
            config.AddCommand<NewCommand>("new")
                .WithDescription("Write a new piece or shop file to start from. Never overwrites.")
                .WithExample("new", "disc", "my-disc.json", "--segments", "24", "--diameter", "\"19 mm\"", "--woods", "maple,padauk");
            config.AddCommand<CheckCommand>("check")
                .WithDescription("Say whether a piece can be made, and what to mend first.")
                .WithExample("check", "examples/two-wood-disc.json");
            config.AddCommand<ExplainCommand>("explain")
                .WithDescription("Show formula, values and source behind a figure; without a name, list all figures.")
                .WithExample("explain", "examples/two-wood-disc.json", "board-width");
            config.AddCommand<StackCommand>("stack")
                .WithDescription("Find the rings for a piece's shape: heights from the boards at hand, segments, and few widths to rip.")
                .WithExample("stack", "examples/feature-bowl.json", "--heights", "\"18 mm, 25 mm\"", "--segments", "16");
            config.AddCommand<PatternCommand>("pattern")
                .WithDescription("Give every segment its wood: spirals, diamonds and the like from numbers, or a picture.")
                .WithExample("pattern", "examples/feature-bowl.json", "--lay", "\"spiral maple,walnut 1\"");
            config.AddCommand<MillingCommand>("milling")
                .WithDescription("From rough wood to the strips of the whole piece: thicknesses, widths, passes, and how exact they must be.")
                .WithExample("milling", "examples/feature-bowl.json");
            config.AddCommand<GlueCommand>("glue")
                .WithDescription("How each ring and the stack are glued: parts, clamps, marks to line up, and the quickest order of it all.")
                .WithExample("glue", "examples/feature-bowl.json", "--picture", "glue.svg");
            config.AddCommand<SolidCommand>("solid")
                .WithDescription("The turned piece as a solid: volumes, walls, and files for a viewer or printer.")
                .WithExample("solid", "examples/feature-bowl.json", "--out", "bowl.glb");
            config.AddCommand<TemplatesCommand>("templates")
                .WithDescription("Shapes at true scale: wedges, rings, profile cards, plates and guides, on paper (PDF) or for a laser or router (SVG, DXF).")
                .WithExample("templates", "examples/feature-bowl.json", "--out", "out", "--kinds", "outside,inside,stack");
            config.AddCommand<GaugesCommand>("gauges")
                .WithDescription("Gauges of the exact angles for a 3D printer: a wedge for both fences, a block for one.")
                .WithExample("gauges", "examples/walnut-ring.json", "--out", "out", "--bed", "\"200 mm\"");
            config.AddCommand<LabelsCommand>("labels")
                .WithDescription("Stickers for rings and batches of wedges, with a code that opens the ring's job sheet in the app.")
                .WithExample("labels", "examples/feature-bowl.json", "--out", "labels.pdf", "--grid", "3x7");
            config.AddCommand<PictureCommand>("picture")
                .WithDescription("Any view of a plan as SVG, PNG or PDF; without a view, list them.")
                .WithExample("picture", "examples/walnut-ring.json", "--view", "fence", "--out", "fence.png");
            config.AddCommand<SimulateCommand>("simulate")
                .WithDescription("Saw one board in simulation with the errors of the shop: every wedge as it comes out.")
                .WithExample("simulate", "examples/two-wood-disc.json");
            config.AddCommand<FitCommand>("fit")
                .WithDescription("Saw, sand and dry-fit many rings in simulation: how wide the joints gape and what is worth improving.")
                .WithExample("fit", "examples/walnut-ring.json", "--rings", "500");
            config.AddCommand<DiagnoseCommand>("diagnose")
                .WithDescription("From what is seen on a dry ring: the cause, which fence to move, which way and how far.")
                .WithExample("diagnose", "examples/two-wood-disc.json", "--read", "\"gathered rim closed\"", "--read", "\"gathered centre 0.4 mm\"")
                .WithExample("diagnose", "--segments", "24", "--diameter", "\"120 mm\"", "--inner", "\"90 mm\"", "--read", "\"half rim 0.3 mm\"");
            config.AddCommand<ChooseCommand>("choose")
                .WithDescription("Which of the measured wedges to glue, in which order, for the least gap.")
                .WithExample("choose", "examples/caliper-readings.csv", "--segments", "12", "--depth", "\"8 mm\"", "--radius", "\"9.5 mm\"", "--woods", "maple,padauk");
            config.AddCommand<BoardsCommand>("boards")
                .WithDescription("Which board gives which strip and in which order to saw, or what is short; without a rack, what to buy.")
                .WithExample("boards", "examples/two-wood-disc.json", "--rack", "examples/small-rack.json");
            config.AddCommand<ReachCommand>("reach")
                .WithDescription("How small one can go in this shop: every number of segments against every diameter.")
                .WithExample("reach", "--shop", "examples/small-shop.json", "--segments", "12-48/12", "--diameters", "8-40/4");
            config.AddCommand<CostCommand>("cost")
                .WithDescription("How long the piece takes, how much wood to buy and what it costs, with ranges.")
                .WithExample("cost", "examples/feature-bowl.json", "--shop", "examples/small-shop.json");
            config.AddCommand<LatheCommand>("lathe")
                .WithDescription("The work at the lathe: holding, boring, the wall after each pass, speeds, order of work.")
                .WithExample("lathe", "examples/feature-bowl.json", "--picture", "lathe.svg");
            config.AddCommand<LearnCommand>("learn")
                .WithDescription("What a record of real runs says of these hands; the next plan uses it.")
                .WithExample("learn", "examples/bench-record.json", "--shop", "examples/small-shop.json");
            var kept = new KeptData(console);
            config.AddBranch("pieces", branch => PieceCommands.AddTo(branch, kept));
            config.AddBranch("shops", branch => ShopCommands.AddTo(branch, kept));
            config.AddBranch("rack", branch => RackCommands.AddTo(branch, kept));
            config.AddBranch("record", branch => RecordCommands.AddTo(branch, kept));
        });
        return app;
    }
}
