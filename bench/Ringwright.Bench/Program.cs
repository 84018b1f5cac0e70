using Ringwright.Bench;

if (args is not [var name])
    return Usage("Give one name.");
if (name == "all")
    return Run(Benches.All);
return Benches.All.FirstOrDefault(bench => bench.Name == name) is { } found ? Run([found]) : Usage($"There is no benchmark '{name}'.");

static int Run(IReadOnlyList<IBench> benches)
{
    foreach (IBench bench in benches)
    {
        Console.WriteLine($"## {bench.Name}: {bench.Title}");
        Console.WriteLine();
        bench.Run(Console.Out);
        Console.WriteLine();
    }

    return 0;
}

static int Usage(string problem)
{
    Console.Error.WriteLine(problem);
    Console.Error.WriteLine("usage: dotnet run -c Release --project bench/Ringwright.Bench -- NAME");
    foreach (IBench bench in Benches.All)
        Console.Error.WriteLine($"  {bench.Name,-10} {bench.Title}");
    Console.Error.WriteLine($"  {"all",-10} every one of them");
    return 2;
}
