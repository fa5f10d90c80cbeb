/* Joints that the code nails, and the nail of the catalog that does it. */
#ifndef SAWBILL_TAKEOFF_CODE_NAILS_H
#define SAWBILL_TAKEOFF_CODE_NAILS_H

#include "counting.h"

enum joint {
    JOINT_STUD_PLATE,  /* one end of a stud, toe-nailed */
    JOINT_BLOCK_PLATE, /* a block on a plate, toe-nailed */
    JOINT_BLOCK_JOIST, /* one end of a block, toe-nailed */
    JOINT_JOIST_PLATE, /* a joist on a plate or girder, toe-nailed */
    JOINT_STUD_STUD,   /* along two studs, face-nailed */
    JOINT_PLATE_PLATE, /* along two plates, face-nailed */
    JOINT_KING_HEADER, /* a king stud into the end of a header */
    JOINT_HEADER,      /* along one edge of two plies, face-nailed */
    JOINT_COUNT
};

/* The fastener of fasteners.csv that the job names for joints; NULL: it names none, or none that is there (a fault). */
const struct fastener *joint_fastener(struct counting *counting, const struct text_value *named);

/* A line of nails: `places` joints, each of them `run` long where nails stand so far apart.  of: "3 plies x 2 ends",
 * how many places there are.  Fills what, count, unit, item, counted; id, where and at are the caller's. */
void count_joint(struct counting *counting, enum joint joint, int64_t places, length_t run, const char *of,
                 struct takeoff_line line);

#endif
