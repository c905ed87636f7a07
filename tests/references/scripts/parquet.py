"""Writes tests/references/parquet.parquet and parquet-zstd.parquet with pyarrow 25.0.1, so that reading Parquet is
tested on files that no library of ours wrote. Run: python3 tests/references/scripts/parquet.py
"""
import datetime
from pathlib import Path

import pyarrow as pa
import pyarrow.parquet as pq

table = pa.table(
    {
        "Find no.": pa.array(["007", "008", "009"], pa.string()),
        "Site": pa.array(["Ottmere", "Ottmere", "Ness"]).dictionary_encode(),
        "Row spacing (mm)": pa.array([3.5, None, float("inf")], pa.float64()),
        "Width (mm)": pa.array([0.1, 12.25, float("nan")], pa.float32()),
        "Layers": pa.array([1, 2, None], pa.int64()),
        "Seen": pa.array([datetime.date(2021, 4, 3), None, datetime.date(1899, 12, 31)], pa.date32()),
        "At": pa.array([datetime.datetime(2021, 4, 3, 12, 30), None, datetime.datetime(2021, 4, 3)], pa.timestamp("ms")),
        "Worn": pa.array([True, False, None], pa.bool_()),
        "Fibres": pa.array([["wool", "silk"], ["lime"], []], pa.list_(pa.string())),
        "Remarks": pa.array(["=1+1", "über, \"2\"", "'quoted'"], pa.string()),
    }
)
here = Path(__file__).resolve().parent.parent
pq.write_table(table, here / "parquet.parquet", compression="snappy")
pq.write_table(table, here / "parquet-zstd.parquet", compression="zstd")
# A column of records.
pq.write_table(
    pa.table({"Find": ["1"], "Size": pa.array([{"l": 1.0, "w": 2.0}])}), here / "parquet-nested.parquet"
)
