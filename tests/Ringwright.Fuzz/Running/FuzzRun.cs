using System.Diagnostics;
using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Ringwright.Core;
using Ringwright.Fuzz.Making;
using Ringwright.Store;

namespace Ringwright.Fuzz.Running;

/// <summary>Tries many inputs of one kind. A case depends on the seed and its number only, so that each can be tried alone.</summary>
public sealed class FuzzRun(Kind kind, int seed, Action<string> say)
{
    private const int MostSimpler = 3000;
    private static readonly TimeSpan MostSimplifying = TimeSpan.FromSeconds(20);
    private readonly Dictionary<string, Finding> _findings = [];
    private readonly Stopwatch _clock = Stopwatch.StartNew();
    private long _begun = long.MaxValue;
    private readonly Dictionary<string, int> _refusals = [];
    private int _case;
    private int _taken;
    private (int Case, TimeSpan Time) _slowest;

    /// <summary>A case that takes longer is a finding; null never.</summary>
    public TimeSpan? Slow { get; init; } = kind.Slow;

    /// <summary>A case that takes more of the processor's time ends the program; null never.</summary>
    public TimeSpan? Hang { get; init; }

    /// <summary>Tries the first <paramref name="count"/> cases of the seed.</summary>
    public FuzzReport Go(int count) => Run(Enumerable.Range(0, count));

    /// <summary>Tries one case.</summary>
    public FuzzReport Only(int number)
    {
        say($"case {number}: {Shown(kind.Make(Dice.For(seed, number)))}");
        return Run([number]);
    }

    private FuzzReport Run(IEnumerable<int> cases)
    {
        using var ended = new CancellationTokenSource();
        if (Hang is TimeSpan hang) new Thread(() => Watch(hang, ended.Token)) { IsBackground = true }.Start();
        int tried = 0;
        TimeSpan told = default;
        foreach (int number in cases)
        {
            _case = number;
            string input = kind.Make(Dice.For(seed, number));
            Note(number, input, Timed(input, out TimeSpan time, count: true), time);
            tried++;
            if (_clock.Elapsed - told < TimeSpan.FromMinutes(1)) continue;
            told = _clock.Elapsed;
            say(string.Create(CultureInfo.InvariantCulture, $"{kind.Name}: {tried:#,0} so far, {_taken:#,0} taken, {told.TotalSeconds:0} s"));
        }

        ended.Cancel();
        return new(kind.Name, seed, tried, _taken, _clock.Elapsed, _slowest.Case, _slowest.Time, [.. _findings.Values], [.. _refusals.OrderByDescending(r => r.Value)]);
    }

    private void Note(int number, string input, string? wrong, TimeSpan time)
    {
        // What else the program did meanwhile (compiling, collecting) is no fault of the input: the quickest of three counts.
        for (int again = 0; again < 2 && wrong is null && time > Slow; again++)
        {
            wrong = Timed(input, out TimeSpan next);
            time = next < time ? next : time;
        }

        if (time > _slowest.Time) _slowest = (number, time);
        if (wrong is null && time > Slow) wrong = $"slow|it took {time.TotalSeconds:0.0} s of the processor";
        if (wrong is null) return;
        string signature = wrong.Split('|')[0];
        if (_findings.TryGetValue(signature, out Finding? known))
        {
            known.Times++;
            return;
        }

        string simplest = signature == "slow" ? input : Simplest(input, signature);
        Finding finding = new(signature, number, (Attempt(simplest) ?? wrong)[(signature.Length + 1)..], simplest);
        _findings[signature] = finding;
        say(string.Create(CultureInfo.InvariantCulture, $"FOUND in case {number} (--seed {seed} --case {number}): {finding.What}\n  simplest input: {Shown(simplest)}\n  whole: {Kept(finding)}"));
    }

    // The files stay, whatever becomes of the run.
    private string Kept(Finding finding)
    {
        string folder = Path.Combine(Path.GetTempPath(), "ringwright-fuzz");
        Directory.CreateDirectory(folder);
        string path = Path.Combine(folder, string.Create(CultureInfo.InvariantCulture, $"{kind.Name}-{seed}-{finding.Case}{kind.Ending}"));
        File.WriteAllText(path, finding.Input, kind.Ending is ".db" or ".img" ? Encoding.Latin1 : Encoding.UTF8);
        return path;
    }

    private string Simplest(string input, string signature)
    {
        var clock = Stopwatch.StartNew();
        int tried = 0;
        bool simpler = true;
        while (simpler)
        {
            simpler = false;
            foreach (string candidate in kind.Simpler(input))
            {
                if (tried++ > MostSimpler || clock.Elapsed > MostSimplifying) return input;
                if (candidate.Length >= input.Length || Attempt(candidate) is not string wrong || !wrong.StartsWith(signature + "|", StringComparison.Ordinal)) continue;
                input = candidate;
                simpler = true;
                break;
            }
        }

        return input;
    }

    private string? Timed(string input, out TimeSpan time, bool count = false)
    {
        // The processor's time, since a busy machine is no fault of the input either.
        TimeSpan begun = Environment.CpuUsage.TotalTime;
        Volatile.Write(ref _begun, begun.Ticks);
        string? wrong = Attempt(input, count);
        time = Environment.CpuUsage.TotalTime - begun;
        Volatile.Write(ref _begun, long.MaxValue);
        return wrong;
    }

    // Null when all is well, otherwise signature and description with a bar between.
    private string? Attempt(string input, bool count = false)
    {
        try
        {
            kind.Check(input);
            if (count) _taken++;
            return null;
        }
        catch (Exception e) when (e is BadInputException or StoreException)
        {
            if (count) Count(e.Message);
            return Sentences.Fault(e.Message, input) is string fault ? $"sentence {fault} {PlaceOf(e)}|{fault}: {Shown(e.Message)}" : null;
        }
        catch (BrokenPromiseException e)
        {
            return $"promise {e.Promise}|{Shown(e.Message)}";
        }
        catch (Exception e)
        {
            return $"{e.GetType().Name} {PlaceOf(e)}|{e.GetType().Name}: {Shown(e.Message)} {PlaceOf(e)}";
        }
    }

    // Sentences that differ in numbers and names only are one.
    private void Count(string sentence)
    {
        string kindOf = Regex.Replace(sentence[Math.Max(0, sentence.IndexOf(": ", StringComparison.Ordinal))..], "[0-9.]+|“[^”]*”", "#");
        _refusals[kindOf] = _refusals.GetValueOrDefault(kindOf) + 1;
    }

    // The innermost places of Ringwright's own.
    private static string PlaceOf(Exception e) =>
        string.Join(" < ", (e.StackTrace ?? "").Split('\n').Where(l => l.Contains("Ringwright.", StringComparison.Ordinal) && !l.Contains("Ringwright.Fuzz", StringComparison.Ordinal)).Take(3).Select(l => l.Trim().Split('(')[0].Replace("at Ringwright.", "", StringComparison.Ordinal)));

    private static string Shown(string text)
    {
        string plain = new([.. text.Take(1500).Select(c => char.IsControl(c) && c != '\n' || char.IsSurrogate(c) ? '·' : c)]);
        return text.Length > 1500 ? $"{plain}… ({text.Length} characters)" : plain;
    }

    private void Watch(TimeSpan hang, CancellationToken ended)
    {
        while (!ended.WaitHandle.WaitOne(1000))
        {
            if (Environment.CpuUsage.TotalTime.Ticks - Volatile.Read(ref _begun) <= hang.Ticks) continue;
            say(string.Create(CultureInfo.InvariantCulture, $"FOUND in case {_case} (--seed {seed} --case {_case}): it has not ended after {hang.TotalSeconds:0} s of the processor"));
            Environment.Exit(1);
        }
    }
}
