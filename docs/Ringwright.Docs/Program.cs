using Ringwright.Docs;

if (args is not [var examples, var page])
{
    Console.Error.WriteLine("usage: dotnet run --project docs/Ringwright.Docs -- examples docs/science.md");
    return 2;
}

File.WriteAllText(page, SciencePage.Write(ExamplePlans.In(examples)));
return 0;
