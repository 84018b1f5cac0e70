using Ringwright.Core.Documents;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Web.Bench;
using Ringwright.Web.Bench.Fields;

namespace Ringwright.Web.Tests.Bench.Fields;

/// <summary>Whatever the files of a shop and of a piece can say can be said in the app: each field of their schemas is typed or chosen somewhere.</summary>
public class EveryFieldTests(RunningApp app) : IClassFixture<RunningApp>
{
    // Typed nowhere, and why.
    private static readonly Dictionary<string, string> Untyped = new()
    {
        ["shop: units"] = "nothing depends on it: every length keeps the unit it was written in",
        ["shop: money.woods[].wood"] = "a price stands beside each wood of the piece; there is none to name",
    };

    // Chosen among few instead of typed: where, and by what.
    private static readonly Dictionary<string, (string Page, string Html)> Chosen = new()
    {
        ["piece: units"] = ("/saw", "name=\"units\""),
        ["piece: kind"] = ("/shape/outline", "id=\"field-kind\""),
        ["piece: shape.outer[].sharp"] = ("/shape/outline", "Sharp</label>"),
        ["piece: shape.inside(drawn).points[].sharp"] = ("/shape/outline", "Sharp</label>"),
        ["piece: shape.holding.kind"] = ("/shape/outline", "name=\"holding\""),
        ["piece: rings[](laminated ring).mirrored"] = ("/shape/rings", "Turn every second segment over"),
        ["shop: sled.kind"] = ("/saw", "id=\"field-sled-kind\""),
        ["shop: money.woods[].per"] = ("/cost", "for=\"field-wood-1-price-per\""),
    };

    private static readonly string[] Typed = ["3.7 mm", "1.3°", "19 °C", "50 min", "7", "33 %", "#123456", "3.7 mm, 5.1 mm", "11, 12, 13", "elm"];

    [Theory]
    [InlineData("piece", "piece-1.schema.json")]
    [InlineData("shop", "shop-1.schema.json")]
    public void Every_field_of_the_schema_is_typed_or_chosen(string document, string schema)
    {
        var reached = Works().SelectMany(work => Changes(work, document)).ToHashSet(StringComparer.Ordinal);
        string[] fields = [.. SchemaFields.Of(schema)];
        Assert.True(fields.Length > 20);
        string[] missed = [.. fields.Where(f => !reached.Contains(f) && !Untyped.ContainsKey($"{document}: {f}") && !Chosen.ContainsKey($"{document}: {f}"))];
        Assert.Empty(missed);
        // No exception outlives its reason.
        string[] idle = [.. Untyped.Keys.Concat(Chosen.Keys).Where(e => e.StartsWith(document + ": ", StringComparison.Ordinal)).Select(e => e[(document.Length + 2)..]).Where(e => reached.Contains(e) || !fields.Contains(e))];
        Assert.Empty(idle);
    }

    [Fact]
    public async Task Every_field_stands_on_the_page_where_it_is_said_to_be()
    {
        Workbench bench = app.Service<Workbench>();
        foreach (string file in (string[])["two-wood-disc.json", "lidded-box.json", "feature-bowl.json", "pen-barrel.json", "mixed-ring.json", "zigzag-band.json", "open-vase.json", "board-bowl.json", "stave-ring.json"])
        {
            bench.Put(Sheet.Of(Example.BenchWith(file).Now.Good.Piece, FullShop));
            foreach (int ring in bench.Now.Good.Rings.Index().DistinctBy(r => r.Item.Ring.GetType()).Select(r => r.Index))
            {
                bench.Select(ring);
                Work work = bench.Now.Work;
                foreach (IGrouping<string, Lens> page in LensBook.All(work).Where(l => l.Place.Ring is null || l.Place.Ring == ring).GroupBy(l => l.Place.Url == "/shape" && l.Id != LensBook.Notes.Id ? "/shape/outline" : l.Place.Url))
                {
                    string html = await app.Client.GetStringAsync(page.Key, TestContext.Current.CancellationToken);
                    string[] missed = [.. page.Where(l => !html.Contains($"id=\"{l.Id}\"", StringComparison.Ordinal)).Select(l => $"{file}, {page.Key}: {l.AddressIn(work)}")];
                    Assert.Empty(missed);
                }
            }
        }
    }

    [Fact]
    public async Task Every_choice_stands_on_the_page_where_it_is_said_to_be()
    {
        Workbench bench = app.Service<Workbench>();
        Work drawn = Works().First(w => w.Piece.Shape?.Inside is Hollow);
        bench.Put(Sheet.Of(Example.BenchWith("zigzag-band.json").Now.Good.Piece with { Units = LengthUnit.Inch }, FullShop));
        string rings = await app.Client.GetStringAsync("/shape/rings", TestContext.Current.CancellationToken);
        bench.Put(Sheet.Of(drawn.Piece, FullShop));
        foreach ((string page, string html) in Chosen.Values)
            Assert.Contains(html, page == "/shape/rings" ? rings : await app.Client.GetStringAsync(page, TestContext.Current.CancellationToken), StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_typed_into_a_field_of_the_shop_is_used_undone_and_kept()
    {
        Workbench bench = Example.Bench;
        foreach ((string address, string text, Func<Shop, object?> get, object expected) in ((string, string, Func<Shop, object?>, object)[])
        [
            ("lathe.swing", "12 in", s => s.Lathe.Swing?.Millimetres, 304.8),
            ("lathe.drills", "8 mm, 3/8 in, 9,5 mm", s => string.Join("; ", s.Lathe.Drills!.Value), "8 mm; 3/8 in; 9,5 mm"),
            ("adhesive.openTime", "7 min", s => s.Adhesive.OpenTime.Minutes, 7.0),
            ("gluing.session", "3 h", s => s.Gluing.Session?.Minutes, 180.0),
            ("gluing.bandClamps", "4", s => s.Gluing.BandClamps, 4),
            ("milling.perPass", "1/32 in", s => s.Milling.PerPass.Written, "1/32 in"),
            ("pace.spread", "1,4", s => s.Pace.Spread, 1.4),
            ("hands.cutsWorth", "120 cuts", s => s.Hands.CutsWorth, 120.0),
            ("money.hour", "32", s => s.Money?.Hour, 32.0),
            ("money.markup", "15 %", s => s.Money?.Markup, 0.15),
            ("money.woods, maple, price", "11.5", s => s.Money?.Woods?[0].Price, 11.5),
        ])
        {
            Lens lens = LensBook.Find(bench.Now.Work, address)!;
            Shop before = bench.Now.Good.Shop;
            bench.Type(lens, text);
            bench.EndRun();
            Assert.Empty(bench.Now.Problems);
            Assert.Equal(expected, get(bench.Now.Good.Shop));
            bench.Undo();
            Assert.Equal(before, bench.Now.Good.Shop);
            bench.Redo();
            Assert.Equal(expected, get(DocumentJson.ReadShop(DocumentJson.Write(bench.Now.Good.Shop))));
        }
    }

    [Theory]
    [InlineData("lathe.drills", "8 mm, , 10 mm", "between the commas")]
    [InlineData("lathe.drills", "8 mm, wide", "from character 7")]
    [InlineData("lathe.drills", "400 mm", "0.5 mm to 200 mm")]
    [InlineData("lathe.jaws.tenonTo", "20 mm", "less than the smallest")]
    [InlineData("milling.roughThicknesses", "", "at least one is needed")]
    [InlineData("milling.roughThicknesses", "27 mm, 20 mm", "thicker than the one before")]
    [InlineData("adhesive.openTime", "10", "a unit is needed")]
    [InlineData("adhesive.cureTime", "5 min", "shorter than the clamp time")]
    [InlineData("adhesive.name", " ", "a name is needed")]
    [InlineData("gluing.bandClamps", "0", "1 to 100")]
    [InlineData("pace.spread", "0.5", "1 to 10")]
    [InlineData("money.currency", "pieces of eight", "8 characters")]
    [InlineData("money.woods, maple, price", "-3", "cannot be")]
    [InlineData("species quince, fresh", "60, 10", "three numbers")]
    public void What_cannot_be_is_said_at_its_field_and_the_rest_goes_on(string address, string text, string words)
    {
        var bench = new Workbench(Sheet.Of(Example.Piece, FullShop));
        bench.Type(LensBook.Find(bench.Now.Work, address)!, text);
        FieldProblem problem = Assert.Single(bench.Now.Problems);
        Assert.Equal(address, problem.Address);
        Assert.Contains(words, problem.Sentence, StringComparison.Ordinal);
        Assert.Equal(FullShop, bench.Now.Good.Shop);
    }

    [Fact]
    public void A_shop_whose_prices_are_all_taken_back_has_none()
    {
        Workbench bench = Example.Bench;
        Lens price = LensBook.Find(bench.Now.Work, "money.woods, maple, price")!, hour = LensBook.Find(bench.Now.Work, "money.hour")!;
        bench.Type(price, "11");
        bench.Type(hour, "20");
        bench.Change(w => w.WithShop(s => CostLenses.WithPrice(s, "Maple", p => p! with { Per = WoodMeasure.BoardFoot })));
        Assert.Equal(new WoodPrice { Wood = "maple", Price = 11, Per = WoodMeasure.BoardFoot }, bench.Now.Good.Shop.Money!.Woods!.Value.Single());
        bench.Type(price, "");
        Assert.Null(bench.Now.Good.Shop.Money!.Woods);
        bench.Type(hour, "");
        Assert.Null(bench.Now.Good.Shop.Money);
    }

    private static Shop FullShop { get; } = Shop.Starting with
    {
        Lathe = new() { Jaws = LatheLenses.UsualJaws(LengthUnit.Millimetre) },
        Species = [new OwnWood { Name = "quince", Density = 700, ShrinkageRadial = 5, ShrinkageTangential = 9 }],
        Money = new() { Woods = [new() { Wood = "maple", Price = 12 }] },
    };

    // The examples, which have every construction among them, in a shop that tells everything; and each kind of inside.
    private static IEnumerable<Work> Works()
    {
        Piece[] examples = [.. Example.Files.Select(f => File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "examples", f))).Where(j => j.Contains($"\"{Piece.FormatName}\"", StringComparison.Ordinal)).Select(DocumentJson.ReadPiece)];
        Assert.Equal(8, examples.SelectMany(e => e.Rings).Select(r => r.GetType()).Distinct().Count());
        Piece bowl = examples.First(e => e.Shape?.Inside is Wall && e.Shape.Holding is not null);
        ShapePoint rim = bowl.Shape!.Outer[^1];
        Hollow drawn = new() { Points = [new() { Diameter = Mm(20), Height = Mm(15) }, new() { Diameter = Mm(rim.Diameter.Millimetres - 20), Height = rim.Height }] };
        return
        [
            .. examples.Select(Priced),
            Priced(bowl with { Shape = bowl.Shape with { Inside = new Wall { Thickness = Mm(8), Along = [new() { Height = Mm(10), Thickness = Mm(9) }] } } }),
            Priced(bowl with { Shape = bowl.Shape with { Inside = drawn } }),
        ];
    }

    // Each wood has a price: typing one changes that price and adds nothing else.
    private static Work Priced(Piece piece) => new(piece, FullShop with { Money = new() { Woods = [.. CostLenses.WoodsOf(new(piece, FullShop)).Select(w => new WoodPrice { Wood = w, Price = 12 })] } });

    private static Length Mm(double millimetres) => Length.FromMillimetres(millimetres);

    // Of rings alike, one is enough.
    private static IEnumerable<Lens> Lenses(Work work) =>
        LensBook.All(work).DistinctBy(lens => lens.Place.Ring is int ring ? $"{lens.Field.Key} of a {work.Piece.Rings[ring].GetType()}" : lens.AddressIn(work));

    private static IEnumerable<string> Changes(Work work, string document)
    {
        string before = Json(work);
        return Lenses(work).SelectMany(lens => Typed.Select(text => lens.Write(work, text, LengthUnit.Millimetre))).Where(w => w.Error is null).SelectMany(w => SchemaFields.Changed(before, Json(w.Work)));

        string Json(Work w) => document == "piece" ? DocumentJson.Write(w.Piece) : DocumentJson.Write(w.Shop);
    }
}
