using System.Text;
using ExcelDataReader;
using Ringwright.Core.Documents;
using Ringwright.Core.Measures;
using Ringwright.Core.Planning;
using Ringwright.Paper.Data;
using Ringwright.Paper.Tests.JobSheets;

namespace Ringwright.Paper.Tests.Data;

/// <summary>The workbook read back by ExcelDataReader, an independent reader.</summary>
public class PlanWorkbookTests
{
    private static readonly Plan Plan = Example.PlanOf(Example.Disc);

    [Fact]
    public async Task Every_cell_comes_back_numbers_as_numbers()
    {
        foreach (MeasureStyle style in new[] { MeasureStyle.Millimetres, MeasureStyle.InchFractions })
        {
            PlanTable[] tables = [PlanTable.CutList(Plan, style), PlanTable.Rings(Plan, style), PlanTable.Figures(Plan, style)];
            using IExcelDataReader reader = await Open(style);
            foreach (PlanTable table in tables)
            {
                Assert.Equal(table.Name, reader.Name);
                Assert.True(reader.Read());
                Assert.Equal(table.Headings, Enumerable.Range(0, reader.FieldCount).Select(reader.GetString));
                foreach (IReadOnlyList<PlanCell> row in table.Rows)
                {
                    Assert.True(reader.Read());
                    for (int c = 0; c < row.Count; c++)
                    {
                        object? cell = c < reader.FieldCount ? reader.GetValue(c) : null;
                        if (row[c].Number is double number) Assert.Equal(number, Assert.IsType<double>(cell), 1e-9 * Math.Max(1, Math.Abs(number)));
                        else Assert.Equal(row[c].Text ?? "", cell?.ToString() ?? "");
                    }
                }

                reader.NextResult();
            }
        }
    }

    [Fact]
    public void The_cut_list_is_the_plan_s_in_either_unit()
    {
        RingPlan ring = Plan.Rings[0];
        IReadOnlyList<PlanCell> mm = PlanTable.CutList(Plan, MeasureStyle.Millimetres).Rows[0], inch = PlanTable.CutList(Plan, MeasureStyle.InchDecimals).Rows[0];
        Assert.Equal(ring["board-width"].Value, mm[6].Number!.Value, 5e-4);
        Assert.Equal(ring["board-width"].Value / 25.4, inch[6].Number!.Value, 5e-5);
        Assert.Equal(7.5, mm[10].Number);
        Assert.Equal("width [in]", PlanTable.CutList(Plan, MeasureStyle.InchFractions).Headings[6]);
    }

    private static async Task<IExcelDataReader> Open(MeasureStyle style)
    {
        Encoding.RegisterProvider(CodePagesEncodingProvider.Instance);
        var stream = new MemoryStream();
        await PlanWorkbook.WriteAsync(Plan, style, stream);
        stream.Position = 0;
        return ExcelReaderFactory.CreateOpenXmlReader(stream);
    }
}
