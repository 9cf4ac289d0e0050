#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Each rule of the house must be able to fail: a small tree that keeps all of them is broken in one place at a time."""
import sys
import tempfile
import unittest
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parent))
import includes
import licence
import packages
import sizes
import tested
import toplevel

SPDX = "// SPDX-License-Identifier: GPL-3.0-or-later\n"
GOOD = {
    "CMakeLists.txt": "# SPDX-License-Identifier: GPL-3.0-or-later\nfind_package(fmt REQUIRED)\n",
    "README.md": "", "DEVELOPERS.md": "", "icons/x.svg": "", "fixtures/x.csv": "",
    "core/LICENSE": "                    GNU GENERAL PUBLIC LICENSE\n",
    "core/base/csv.h": SPDX, "core/base/csv.cpp": SPDX + '#include "core/base/csv.h"\n',
    "core/walk/fold.h": SPDX,
    "core/walk/fold.cpp": SPDX + '#include "core/walk/fold.h"\n#include "core/plan/plan.h"\n#include <string>\n',
    "core/plan/plan.h": SPDX + '#include "core/base/csv.h"\n',
    "core/plan/CMakeLists.txt": "# SPDX-License-Identifier: GPL-3.0-or-later\nadd_library(proofwalk_plan STATIC plan.h)\n"
                                "target_link_libraries(proofwalk_plan PUBLIC proofwalk_base)\n",
    "core/walk/CMakeLists.txt": "# SPDX-License-Identifier: GPL-3.0-or-later\nadd_library(proofwalk_walk STATIC fold.cpp)\n"
                                "target_link_libraries(proofwalk_walk PUBLIC proofwalk_plan)\n",
    "tests/base/csv.cpp": SPDX, "tests/walk/fold.cpp": SPDX,
}


class Rules(unittest.TestCase):
    def setUp(self):
        self.folder = tempfile.TemporaryDirectory()
        self.root = Path(self.folder.name)
        for name, text in GOOD.items():
            self.write(name, text)

    def tearDown(self):
        self.folder.cleanup()

    def write(self, name, text):
        path = self.root / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text(text, encoding="utf-8")

    def expect(self, rule, *wanted):
        """Those findings and no others, each by how it begins."""
        told = rule(self.root)
        self.assertEqual(len(told), len(wanted), told)
        for finding, start in zip(told, wanted):
            self.assertTrue(finding.startswith(start), finding)

    def testAGoodTreeIsQuiet(self):
        for rule in (includes.rule, licence.rule, sizes.rule, tested.rule, toplevel.rule,
                     lambda root: packages.rule(root, {"libfmt-dev"})):
            self.expect(rule)

    def testAnIncludeThatClimbs(self):
        self.write("core/plan/plan.h", SPDX + '#include <vector>\n#include "core/walk/fold.h"\n')
        self.expect(includes.rule, "core/plan/plan.h:3: plan may not include walk")

    def testAnIncludeBesideIt(self):
        self.write("core/plan/plan.h", SPDX + '#include "core/journal/journal.h"\n')
        self.expect(includes.rule, "core/plan/plan.h:2: plan may not include journal")

    def testBaseKnowsNobody(self):
        self.write("core/base/csv.h", SPDX + '#include "core/words/words.h"\n')
        self.expect(includes.rule, "core/base/csv.h:2: base may not include words")

    def testAnIncludeOfTheWindow(self):
        self.write("core/walk/fold.cpp", SPDX + '#include "qml/models/walk.h"\n')
        self.expect(includes.rule, "core/walk/fold.cpp:2: walk may not include qml")

    def testAnIncludeWithAPathOfItsOwn(self):
        self.write("core/walk/fold.cpp", SPDX + '#include "../../qml/walk.h"\n')
        self.expect(includes.rule, "core/walk/fold.cpp:2: ")

    def testQtWhereItHasNoPlace(self):
        self.write("core/walk/fold.cpp", SPDX + "#include <QString>\n")
        self.expect(includes.rule, "core/walk/fold.cpp:2: walk may not include Qt's <QString>")

    def testQuickInTheReport(self):
        self.write("core/report/pages.h", SPDX + "#include <QPainter>\n#include <QQuickView>\n")
        self.expect(includes.rule, "core/report/pages.h:3: only qml may include <QQuickView>")

    def testALinkThatClimbs(self):
        self.write("core/plan/CMakeLists.txt", GOOD["core/plan/CMakeLists.txt"].replace("_base", "_walk"))
        self.expect(includes.rule, "core/plan/CMakeLists.txt:3: plan may not link proofwalk_walk")

    def testARoomNobodyKnows(self):
        self.write("core/misc/misc.h", SPDX)
        self.expect(includes.rule, "core/misc/misc.h:1: ")

    def testALicenceLineMissing(self):
        self.write("core/walk/fold.h", "// The fold.\n" + SPDX)
        self.write("tests/x.py", "#!/usr/bin/env python3\nimport os\n")
        self.expect(licence.rule, "core/walk/fold.h:1: ", "tests/x.py:1: ")

    def testAFileTooLong(self):
        self.write("core/walk/fold.cpp", SPDX * 401)
        self.expect(sizes.rule, "core/walk/fold.cpp:401: 401 lines")

    def testAFunctionTooLong(self):
        self.write("core/walk/fold.cpp", SPDX + "void f()\n{\n" + "    g();\n" * 81 + "}\n")
        self.expect(sizes.rule, "core/walk/fold.cpp:3: a function of 81 lines")

    def testALineTooLongOrUnclean(self):
        self.write("core/walk/fold.cpp", SPDX + "x" * 121 + "\n\ty\nz \n")
        self.expect(sizes.rule, "core/walk/fold.cpp:2: 121 signs", "core/walk/fold.cpp:3: a tab",
                    "core/walk/fold.cpp:4: a tab")

    def testAnException(self):
        self.write("core/walk/fold.cpp", SPDX * 401)
        self.write("tests/house/exceptions.txt", "file core/walk/fold.cpp one table\n")
        self.expect(sizes.rule)

    def testAnExceptionWithoutUseOrReason(self):
        self.write("tests/house/exceptions.txt", "file core/walk/fold.cpp\n")
        self.expect(sizes.rule, "tests/house/exceptions.txt:1: gives no reason",
                    "tests/house/exceptions.txt:1: core/walk/fold.cpp breaks the rule no longer")

    def testAFileWithoutATest(self):
        self.write("core/walk/order.cpp", SPDX)
        self.expect(tested.rule, "core/walk/order.cpp:1: has no test")
        self.write("tests/house/tested-through.txt", "tests/walk/fold.cpp: order\n")
        self.expect(tested.rule)

    def testAFileWhoseHeaderATestIncludes(self):
        self.write("core/walk/order.cpp", SPDX)
        self.write("tests/walk/fold.cpp", SPDX + '#include "core/walk/order.h"\n')
        self.expect(tested.rule)

    def testAListOfTestsThatIsOutOfDate(self):
        self.write("core/walk/order.cpp", SPDX)
        self.write("tests/house/tested-through.txt",
                   "tests/walk/gone.cpp: order\ntests/base/csv.cpp: csv\ntests/walk/fold.cpp: x\n")
        self.expect(tested.rule, "tests/house/tested-through.txt:2: core/base/csv.cpp has a test of its own",
                    "tests/house/tested-through.txt:1: there is no tests/walk/gone.cpp",
                    "tests/house/tested-through.txt:3: there is no core/walk/x.cpp")

    def testAPackageNotListed(self):
        self.write("CMakeLists.txt", "# find_package(JPEG)\nfind_package(fmt REQUIRED)\n"
                                     "find_package(Qt6 6.4 REQUIRED\n    COMPONENTS Core Charts)\nfind_package(Odd)\n")
        self.write("qml/Main.qml", "import QtQuick.Controls\n")
        self.expect(lambda root: packages.rule(root, {"libfmt-dev", "qt6-base-dev"}),
                    "CMakeLists.txt:3: Qt6::Charts needs qt6-charts-dev", "CMakeLists.txt:5: which package brings Odd",
                    "qml/Main.qml:1: import QtQuick.Controls needs qml6-module-qtquick-controls")

    def testWhatDoesNotBelongAtTheTop(self):
        self.write("Makefile", "")
        (self.root / "README.md").unlink()
        self.expect(toplevel.rule, "Makefile:1: ", "README.md:1: ")


if __name__ == "__main__":
    unittest.main()
