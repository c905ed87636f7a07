"""Writes tests/references/workbook.xlsx with openpyxl, so that reading a spreadsheet is tested on a file
that our own parser did not write. Run: /usr/bin/python3 tests/references/scripts/workbook.py
"""
import datetime
from pathlib import Path

import openpyxl

book = openpyxl.Workbook()
finds = book.active
finds.title = "Liste Nord"
finds["A1"] = "Finds of an invented place"
# Row 2 stays empty.
for column, header in enumerate(["No.", "Density", "Rows", "Seen", "Share", "Twined", "Sum", "Remark"], start=1):
    finds.cell(row=3, column=column, value=header)

finds["A4"] = "007"  # typed as text
finds["B4"] = 3.5
finds["C4"] = datetime.date(2021, 4, 3)  # "3-4" that a spreadsheet took for a date
finds["C4"].number_format = "d-mmm"
finds["D4"] = datetime.datetime(1899, 12, 31)  # day 0 of the 1900 system is 31 December 1899
finds["E4"] = 0.45
finds["E4"].number_format = "0%"
finds["F4"] = True
finds["G4"] = "=B4*2"  # no stored result: openpyxl does not compute
finds["H4"] = 'c. 3-4, "open"'

finds["A5"] = 8
finds["A5"].number_format = "000"  # shown as 008
finds["B5"] = 0.1 + 0.2  # stored as 0.30000000000000004
finds["C5"] = "3-4"
finds["D5"] = datetime.date(1900, 3, 1)  # day 61, the first after the 29 February that never was
finds["E5"] = 1234567.25
finds["E5"].number_format = "#,##0.00"
finds["F5"] = False
finds["H5"] = "über 2 cm"

finds["A6"] = "merged"
finds.merge_cells("A6:A7")
finds["B7"] = 12

other = book.create_sheet("Liste Süd")
other["A1"] = "No."
other["A2"] = "001"
book.create_sheet("leer")

book.save(Path(__file__).parent.parent / "workbook.xlsx")
