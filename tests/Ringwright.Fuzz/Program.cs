using System.Globalization;
using Ringwright.Fuzz;
using Ringwright.Fuzz.Running;

const string Usage = "Usage: Ringwright.Fuzz KIND|all COUNT [--seed N] [--case N] [--refusals]";
if (args.Length < 2 || !int.TryParse(args[1], NumberStyles.None, CultureInfo.InvariantCulture, out int count) || count < 1) return Wrong($"{Usage}\nKinds: {string.Join(", ", AllKinds.Names)}");
int seed = 1;
int? only = null;
bool refusals = args.Contains("--refusals");
args = [.. args.Where(a => a != "--refusals")];
for (int i = 2; i + 1 < args.Length; i += 2)
{
    if (!double.TryParse(args[i + 1], NumberStyles.Float, CultureInfo.InvariantCulture, out double value)) return Wrong(Usage);
    if (args[i] == "--seed") seed = (int)value;
    else if (args[i] == "--case") only = (int)value;
    else return Wrong(Usage);
}

string[] names = args[0] == "all" ? [.. AllKinds.Names] : [args[0]];
if (names.Except(AllKinds.Names).FirstOrDefault() is string unknown) return Wrong($"“{unknown}” is no kind; there are {string.Join(", ", AllKinds.Names)}");
bool clean = true;
foreach (string name in names)
{
    using Kind kind = AllKinds.Named(name);
    var run = new FuzzRun(kind, seed, Console.WriteLine) { Hang = TimeSpan.FromMinutes(2) };
    FuzzReport report = only is int number ? run.Only(number) : run.Go(count);
    Console.WriteLine(report.Line);
    if (refusals)
        foreach ((string sentence, int times) in report.Refusals.Take(25)) Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{times,8} {sentence}"));
    clean &= report.Findings.Count == 0;
}

return clean ? 0 : 1;

static int Wrong(string sentence)
{
    Console.Error.WriteLine(sentence);
    return 2;
}
