using Ringwright.Bench;

switch (args)
{
    case ["page", var file]:
        using (StreamWriter page = new(file) { NewLine = "\n" }) Page.Write(page);
        return 0;
    case ["all"]:
        Page.Write(Console.Out, Benches.All);
        return 0;
    case [var name] when Benches.All.FirstOrDefault(bench => bench.Name == name) is { } found:
        Page.Write(Console.Out, [found]);
        return 0;
    default:
        Console.Error.WriteLine(args is [var unknown] ? $"There is no benchmark '{unknown}'." : "Give one name.");
        Console.Error.WriteLine("usage: dotnet run -c Release --project bench/Ringwright.Bench -- NAME");
        foreach (IBench bench in Benches.All) Console.Error.WriteLine($"  {bench.Name,-10} {bench.Title}");
        Console.Error.WriteLine($"  {"all",-10} every one of them");
        Console.Error.WriteLine($"  {"page FILE",-10} all of them into a page with what is promised");
        return 2;
}
