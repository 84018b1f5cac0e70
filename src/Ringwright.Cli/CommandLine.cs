using Ringwright.Cli.Commands;
using Ringwright.Cli.Commands.Kept;
using Ringwright.Cli.Output;
using Ringwright.Cli.Reference;
using Ringwright.Core;
using Ringwright.Store;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Ringwright.Cli;

/// <summary>Runs one command. Results go to the first writer, complaints and notes beside the answer to the second, one sentence each.</summary>
public static class CommandLine
{
    /// <summary>Runs the command in <paramref name="args"/> and returns its exit code.</summary>
    public static int Run(string[] args, TextWriter output, TextWriter complaints)
    {
        var console = PlainConsole.On(output);
        try
        {
            return App(console, complaints).Run(args);
        }
        catch (BadInputException e)
        {
            complaints.WriteLine(e.Message);
            return ExitCode.BadInput;
        }
        catch (CommandAppException e)
        {
            complaints.WriteLine($"{OneLine.Of(e.Message, 200).TrimEnd('.')}; see 'ringwright --help'.");
            return ExitCode.BadInput;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            complaints.WriteLine(OneLine.Of(e.Message, 500));
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

    private static CommandApp App(IAnsiConsole console, TextWriter notes)
    {
        var app = new CommandApp();
        var catalogue = new CommandCatalogue();
        app.Configure(config =>
        {
            config.PropagateExceptions();
            // An option that is not known must not be passed over in silence.
            config.UseStrictParsing();
            config.ConfigureConsole(console);
            config.SetApplicationName("ringwright");
            config.SetInterceptor(new KeptInterceptor(notes));
            config.SetApplicationVersion(AppVersion.Text);
            catalogue.Add<PlanCommand>(config);
            catalogue.Add<NewCommand>(config);
            catalogue.Add<CheckCommand>(config);
            catalogue.Add<ExplainCommand>(config);
            catalogue.Add<StackCommand>(config);
            catalogue.Add<PatternCommand>(config);
            catalogue.Add<MillingCommand>(config);
            catalogue.Add<GlueCommand>(config);
            catalogue.Add<SolidCommand>(config);
            catalogue.Add<TemplatesCommand>(config);
            catalogue.Add<GaugesCommand>(config);
            catalogue.Add<LabelsCommand>(config);
            catalogue.Add<PictureCommand>(config);
            catalogue.Add<SimulateCommand>(config);
            catalogue.Add<FitCommand>(config);
            catalogue.Add<DiagnoseCommand>(config);
            catalogue.Add<ChooseCommand>(config);
            catalogue.Add<BoardsCommand>(config);
            catalogue.Add<ReachCommand>(config);
            catalogue.Add<CostCommand>(config);
            catalogue.Add<LatheCommand>(config);
            catalogue.Add<LearnCommand>(config);
            config.AddBranch("pieces", branch => PieceCommands.AddTo(new(console, "pieces", branch, catalogue)));
            config.AddBranch("shops", branch => ShopCommands.AddTo(new(console, "shops", branch, catalogue)));
            config.AddBranch("rack", branch => RackCommands.AddTo(new(console, "rack", branch, catalogue)));
            config.AddBranch("record", branch => RecordCommands.AddTo(new(console, "record", branch, catalogue)));
            config.AddBranch("settings", branch => SettingCommands.AddTo(new(console, "settings", branch, catalogue)));
            // Not for turning: it writes the pages in docs.
            config.AddDelegate<PageSettings>("reference", (_, settings, _) =>
            {
                console.Profile.Out.Writer.Write(settings.Page == PageSettings.FileFormat ? SchemaPage.Write() : ReferencePage.Write(catalogue));
                return ExitCode.Done;
            }).IsHidden();
        });
        return app;
    }
}
